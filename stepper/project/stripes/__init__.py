"""Stripe sequences that a page defines, and the rows that call for them."""
