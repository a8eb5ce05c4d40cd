"""The pages of the full screen: what each shows, as rows; pure functions of a scene and a terminal."""
