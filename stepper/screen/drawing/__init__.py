"""Text as a screen shows it: rows and their looks, large letters and numerals, and where they go. No I/O."""
