"""Stitches that a page defines itself, in its list of abbreviations."""
