"""Yarn: floats, strands, what every round takes and what is left."""
