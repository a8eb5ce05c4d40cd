"""Printed counts against the arithmetic, and what does not fit."""
