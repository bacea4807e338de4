"""The command line: one module for each kind of command, and the program that they make."""

from enclosure_app.cli.program import main
from enclosure_app.cli.statuses import FAULTS, NOTHING_WRONG, STOPPED, UNUSABLE

__all__ = ["FAULTS", "NOTHING_WRONG", "STOPPED", "UNUSABLE", "main"]
