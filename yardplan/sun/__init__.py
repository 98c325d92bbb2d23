"""Where the sun stands and what light falls where."""
