"""Finding a fault in the fabric and mending it: part of the session, without input or output."""
