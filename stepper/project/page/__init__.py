"""A printed page, copied or bought as PDF, made into a project file."""
