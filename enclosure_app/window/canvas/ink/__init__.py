"""How things are shown over the drawing: inks, pens, letters, and the marks of what a hand does."""
