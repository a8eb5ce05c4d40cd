"""Sound in and out: streams of the sound device, recordings in their place."""
