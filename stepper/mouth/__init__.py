"""What speaks: voices, the queue of lines, tones."""
