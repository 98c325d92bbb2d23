"""A yard drawn with a QPainter onto anything: window, paper, picture."""
