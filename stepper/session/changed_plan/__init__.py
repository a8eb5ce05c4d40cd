"""Another plan under the same knitting: what is carried over, and where it goes on."""
