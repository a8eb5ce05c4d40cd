"""Rounds that increase or decrease evenly, the blended ones among them."""
