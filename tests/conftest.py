"""Shared set-up of all tests: Qt without a screen, and the folder of builders on the path."""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).parent))

from hypothesis import settings

# Machines that run the tests differ by far more than any deadline could allow for.
settings.register_profile("house", deadline=None)
settings.load_profile("house")
