"""A plan that is being knitted: another length, another file, a count that is off."""
