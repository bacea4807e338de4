"""Marks put into the office's own DXF, with everything else in it left as it is."""
