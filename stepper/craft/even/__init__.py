"""Changes spread evenly over a round: where each goes, and how that is said."""
