"""Charts that a page draws in its text."""
