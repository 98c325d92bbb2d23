"""Where could it go, and with which partner: built on the checks."""
