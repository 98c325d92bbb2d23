"""Rules of the spacing check: plants against each other, rows, beds, and crowns against edges."""
