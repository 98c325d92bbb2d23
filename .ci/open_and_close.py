"""Opens a yard in the installed program's real window, offscreen, and closes it again."""

import sys
from pathlib import Path

from PySide6.QtCore import QTimer

from yardplan.window.app import start

application = start(Path(sys.argv[1]))
window = application.window
assert window is not None
QTimer.singleShot(1500, window.close)
code = application.exec()
plants = len(window.open_yard.yard.plantings)
application.window = None
print(f"opened {sys.argv[1]} in the window: {plants} plants")
sys.exit(code if plants else 1)
