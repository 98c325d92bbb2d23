"""Shared set-up of all tests: Qt without a screen, and the folder of builders on the path."""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).parent))

from hypothesis import settings

# Machines that run the tests differ by far more than any deadline could allow for. The same examples
# every time, so that a run says something of the change; `--hypothesis-profile=explore` looks for new ones.
settings.register_profile("house", deadline=None, derandomize=True)
settings.register_profile("explore", deadline=None)
settings.load_profile("house")
