"""The yard file and other formats: reading, writing, versions, recovery."""
