"""Drawings that are files, and the markup of those on the page to print."""
