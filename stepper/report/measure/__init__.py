"""The garment measured: how stitches flow, what each piece is, and what it measures beside the wearer."""
