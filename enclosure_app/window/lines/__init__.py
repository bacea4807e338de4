"""What the lines are: the table of layers, its map, and giving picked lines a product."""
