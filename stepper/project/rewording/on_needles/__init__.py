"""Tables of other wordings, by where the stitches are: cast on, joined, parted, held, taken up, closed off."""
