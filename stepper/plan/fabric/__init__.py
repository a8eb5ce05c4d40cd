"""The fabric below the needles, column by column, and how work goes on with it."""
