"""Other wordings of what a page says beside the work."""
