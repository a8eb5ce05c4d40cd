"""The sheet beside the needles: the whole plan on paper."""
