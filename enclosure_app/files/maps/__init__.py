"""What the lines of a drawing stand for: layer maps, rule books, the catalogue, guesses."""
