"""The handbook: pages shipped in resources/handbook, shown by F1 at the page for what has the focus."""
