"""Sound in and out."""
