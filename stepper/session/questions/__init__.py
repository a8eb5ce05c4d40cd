"""What the knitter asks in the middle of a round, and what there is to answer."""
