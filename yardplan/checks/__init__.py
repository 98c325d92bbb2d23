"""One file a rule: each a pure function from a survey to findings."""
