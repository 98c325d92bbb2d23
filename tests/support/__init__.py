"""Builders and strategies shared by the tests."""
