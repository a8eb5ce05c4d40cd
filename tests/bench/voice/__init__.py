"""How well the ears hear: material from packaged voices, mixed with the sound of a film, given to each recogniser."""
