"""Which size fits: measurements beside the wearer, sizes ranked, and what to be careful of."""
