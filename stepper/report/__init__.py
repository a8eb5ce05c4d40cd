"""What is read before and after the knitting."""
