"""Words: numbers, cues and sentences."""
