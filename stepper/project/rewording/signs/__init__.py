"""How rows, lists, sides and repeats are written in print, put into one notation."""
