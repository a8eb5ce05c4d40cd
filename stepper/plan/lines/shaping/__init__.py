"""Shaping over many rounds: on which rounds it falls, at which edge, and what is worked beside it."""
