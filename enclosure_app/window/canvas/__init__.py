"""The drawing in the window: what is seen of it, and the gestures that change it."""
