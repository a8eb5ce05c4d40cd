"""Read project text into a checked project."""
