"""The sheet on the screen: view, layers, snapping, pointer and keys."""
