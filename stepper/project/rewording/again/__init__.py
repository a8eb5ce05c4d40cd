"""What is worked again by its name: stitch patterns of the page, and pieces made a second time."""
