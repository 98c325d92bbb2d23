"""Gestures, one a file: plain events in metres in, trial yards and commits out."""
