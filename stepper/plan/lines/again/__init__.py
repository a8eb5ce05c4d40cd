"""What is worked again: rows repeated by number or mark, a part like another, a part reversed."""
