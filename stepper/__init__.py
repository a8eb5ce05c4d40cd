"""A hands-free, voice-friendly round counter and instruction stepper for hand knitting."""
