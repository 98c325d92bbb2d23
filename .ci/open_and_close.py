"""Opens a yard in the installed program's real window, offscreen, and closes it again."""

import sys

from PySide6.QtCore import QTimer

from yardplan.window.app import start

application, window = start([sys.argv[1]])
QTimer.singleShot(1500, application.quit)
code = application.exec()
names = [thing.id for thing in window.open_yard.yard.plantings]
print(f"opened {sys.argv[1]} in the window: {len(names)} plants")
sys.exit(code if names else 1)
