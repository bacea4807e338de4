"""What stands before the person, and what is shown there: the drawing with its panels, or the walk."""
