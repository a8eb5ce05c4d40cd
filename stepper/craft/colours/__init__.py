"""Colours: how light they are, how far apart, how they look to other eyes and what to change."""
