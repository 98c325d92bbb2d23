"""What goes on paper: plan, schedule, setting-out, conflicts, care."""
