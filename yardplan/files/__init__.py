"""The yard file: read with every fault named, written so that a crash or a full disk loses nothing."""
