"""Sentences that tell in prose what is shaped and repeated, taken apart phrase by phrase."""
