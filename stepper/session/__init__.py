"""The knitting session as a state machine without input or output."""
