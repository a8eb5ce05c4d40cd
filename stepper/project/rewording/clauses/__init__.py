"""Cut sentences of a page into clauses and tell which of them work no stitch. No I/O."""
