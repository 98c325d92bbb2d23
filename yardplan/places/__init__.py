"""Places and their climate, looked up offline in the shipped tables."""
