"""Shared set-up of all tests: Qt without a screen, and the folder of builders on the path."""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).parent))

import importlib
import pkgutil

from hypothesis import settings

import yardplan

# Hypothesis takes figures of the loaded modules among its examples: load all, so that they do not hang on
# which test comes first. Without Qt those that need it stay out.
for found in pkgutil.walk_packages(yardplan.__path__, "yardplan.", onerror=lambda name: None):
    if not found.name.endswith("__main__"):
        try:
            importlib.import_module(found.name)
        except ModuleNotFoundError as missing:
            if missing.name is None or not missing.name.startswith("PySide6"):
                raise

# Machines that run the tests differ by far more than any deadline could allow for. The same examples
# every time, so that a run says something of the change; `--hypothesis-profile=explore` looks for new ones.
settings.register_profile("house", deadline=None, derandomize=True)
settings.register_profile("explore", deadline=None)
settings.load_profile("house")
