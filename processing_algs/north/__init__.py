"""Algorithms about the three norths."""
