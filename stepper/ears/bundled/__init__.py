"""The bundled recogniser: which of all that may be said fits the sounds of an utterance."""
