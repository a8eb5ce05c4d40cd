"""What is told once a round is reached, and what to have ready for those ahead."""
