"""The finished sheet."""
