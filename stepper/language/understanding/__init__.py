"""What a spoken or typed line means: the tables of wordings, and what reads them."""
