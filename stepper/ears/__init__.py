"""Listening: where an utterance begins and ends, and which cue it is."""
