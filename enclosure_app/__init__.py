"""Checks building section drawings for continuity of the enclosure's control layers."""

__version__ = "0.1.0"
