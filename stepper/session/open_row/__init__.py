"""The row that is not read, at which a garment ends for now: part of the session, without I/O."""
