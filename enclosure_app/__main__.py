"""Runs the command line as ``python -m enclosure_app``."""

import sys

from enclosure_app.cli import main

if __name__ == "__main__":
    sys.exit(main())
