"""Both sides of surfaces, and what falls on them."""
