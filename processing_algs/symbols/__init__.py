"""Map symbols."""
