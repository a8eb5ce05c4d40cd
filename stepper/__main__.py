"""Run the command line with `python -m stepper`."""

from __future__ import annotations

import sys

from stepper.commands.main import main

if __name__ == "__main__":
    sys.exit(main())
