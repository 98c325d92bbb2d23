"""Small helps for .ci/run: the README's commands, the test packages of the core, the wheel's contents."""

import re
import sys
import tomllib
import zipfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
#: Packages that are Qt or bring it with them: the core is tested without these.
QT_PACKAGES = ("PySide6", "pytest-qt")


def readme_command(which: str) -> str:
    """The command in the fenced block that follows the marker `<!-- which -->` in README.md."""
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    found = re.search(rf"<!-- {which} -->\s*```sh\n(.+?)\n```", text, re.S)
    if not found:
        sys.exit(f"README.md has no command marked <!-- {which} -->")
    return found[1]


def core_packages() -> str:
    """What the program and its tests need except Qt, for pip's command line."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    wanted = project["dependencies"] + project["optional-dependencies"]["test"]
    here = [name.partition(";")[0].replace(" ", "") for name in wanted]
    return " ".join(name for name in here if not name.startswith(QT_PACKAGES))


def wheel_contents(wheel: str) -> str:
    """A line that counts the shipped files; leaves with an error when a folder is missing."""
    names = zipfile.ZipFile(wheel).namelist()
    counts = {
        folder: sum(name.startswith(f"yardplan/{folder}/") for name in names)
        for folder in ("resources", "sample_yards", "window", "checks")
    }
    if not all(counts.values()):
        sys.exit(f"the wheel lacks a folder: {counts}")
    return f"{Path(wheel).name}: {len(names)} files, {counts}"


if __name__ == "__main__":
    match sys.argv[1]:
        case "core-packages":
            print(core_packages())
        case "wheel-contents":
            print(wheel_contents(sys.argv[2]))
        case which:
            print(readme_command(which))
