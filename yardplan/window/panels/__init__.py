"""Panels beside the sheet."""
