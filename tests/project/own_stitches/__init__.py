"""Tests of the stitches that a page defines itself."""
