"""What stands round the drawing: bars, docks, tabs, strips, and the first page."""
