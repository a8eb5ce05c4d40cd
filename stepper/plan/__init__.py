"""From a checked project to the rounds that are knitted."""
