"""One sitting: all that is joined together so that she can knit, from the project file to the screen."""
