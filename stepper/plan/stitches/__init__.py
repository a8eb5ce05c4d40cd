"""A written-out round, stitch by stitch, on the stitches that are there."""
