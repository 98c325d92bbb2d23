"""Towns, US ZIP codes and climate stations shipped with the program: where a yard lies, its climate."""
