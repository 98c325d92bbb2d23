"""Light in the window: overlay, spot, the day played, who takes whose light."""
