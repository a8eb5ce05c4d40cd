"""Marks on a page to which other rows refer."""
