"""What a printed page leaves unread: found, its words weighed, and kept as the knitter answers."""
