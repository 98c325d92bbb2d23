"""yardplan: plan a fruit yard to scale, with live checks of room, sun, pollen and access."""

__version__ = "0.1.0"
