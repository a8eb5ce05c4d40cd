"""The trade's arithmetic: numbers in, numbers out, each formula with its source."""
