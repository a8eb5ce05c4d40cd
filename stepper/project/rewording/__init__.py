"""Other printed wordings and notations, put into the words of the grammar."""
