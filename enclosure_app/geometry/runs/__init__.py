"""Runs of points: along one, beside one, two side by side."""
