"""The stand-ins of the command line are there for every test of it."""

from tests.cli.stand_ins import road

__all__ = ["road"]
