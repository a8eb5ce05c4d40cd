"""Tables of other wordings, by how a page is written: signs, leaflets, everyday English, remarks."""
