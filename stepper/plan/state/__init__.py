"""What is on the needles while the pattern is worked, and what changes it."""
