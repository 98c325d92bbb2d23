"""`python -m yardplan` and the `yardplan` command."""

from __future__ import annotations

import os
import sys


def main() -> None:
    """Run the command line and leave with its exit code."""
    from yardplan.cli import main as command_line

    try:
        code = command_line()
        sys.stdout.flush()
    except BrokenPipeError:
        # The reader of a pipe went away (`yardplan plants | head`): nothing is wrong here.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        code = 0
    sys.exit(code)


if __name__ == "__main__":
    main()
