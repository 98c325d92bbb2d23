"""The guided start: a strip above the sheet that leads through the first yard at the real controls."""
