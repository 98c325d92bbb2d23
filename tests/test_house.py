"""Rules of the house that no linter holds."""

from __future__ import annotations

from pathlib import Path

import yardplan

#: Longer modules do more than one thing.
MOST_LINES = 500


def test_no_module_is_longer_than_the_house_allows():
    modules = [*Path(yardplan.__file__).parent.rglob("*.py"), *Path(__file__).parent.rglob("*.py")]
    lengths = {path.name: len(path.read_text(encoding="utf-8").splitlines()) for path in modules}
    assert len(lengths) > 300
    assert {name: lines for name, lines in lengths.items() if lines > MOST_LINES} == {}
