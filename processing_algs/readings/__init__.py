"""Algorithms that turn compass readings into true attitudes."""
