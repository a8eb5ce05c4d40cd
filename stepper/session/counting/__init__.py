"""Counts: when one pays, what it must be, and when it is read back first."""
