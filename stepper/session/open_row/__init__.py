"""The row that is not read, at which the garment ends for now: part of the session, without input or output."""
