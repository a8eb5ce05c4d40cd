"""Read a project file as YAML: nodes with their places, and what is wrong with how it is written."""
