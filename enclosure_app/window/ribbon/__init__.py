"""The layers unrolled, and what the mouse is told over them."""
