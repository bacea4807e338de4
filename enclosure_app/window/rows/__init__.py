"""Rows of lists: what they are painted with, and the lists that hold them."""
