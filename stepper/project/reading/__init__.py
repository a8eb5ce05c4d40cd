"""A line of the pattern, read into instructions."""
