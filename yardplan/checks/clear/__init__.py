"""Rules of the clearance check: buildings, lot lines, septic works, buried and overhead lines, pools."""
