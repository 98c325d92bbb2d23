"""`python -m yardplan` and the `yardplan` command."""

from __future__ import annotations

import sys


def main() -> None:
    """Run the command line and leave with its exit code."""
    from yardplan.cli import main as command_line

    sys.exit(command_line())


if __name__ == "__main__":
    main()
