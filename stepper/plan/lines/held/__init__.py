"""Stitches held, taken back, set apart or laid out, and the gaps between them."""
