"""Tables of other wordings, by what is worked: casting on, rows, shaping, markers, parts."""
