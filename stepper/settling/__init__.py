"""What a pasted page left open, settled by short answers at a terminal."""
