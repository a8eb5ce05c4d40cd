"""The lines of a pattern, worked in their order."""
