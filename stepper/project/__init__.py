"""Project text to a checked project."""
