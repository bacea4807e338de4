"""Solids and the boundaries of many: what is near, what touches, which side is which."""
