"""Other formats out of a yard and into it: GeoJSON, DXF, tables of plants."""
