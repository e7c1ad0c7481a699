"""Standards and plain files in and out."""
