"""The sitting on a page: seen and stepped from a browser, on this computer or on the arm of the sofa."""
