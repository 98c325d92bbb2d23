"""The document: what a yard holds. Frozen values in metres; no Qt, no files, no plant facts."""
