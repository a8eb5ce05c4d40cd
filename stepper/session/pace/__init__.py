"""How fast she knits, and what follows from it: part of the session, without input or output."""
