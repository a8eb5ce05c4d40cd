"""One sitting: everything joined together for the knitter, from the project file to the screen."""
