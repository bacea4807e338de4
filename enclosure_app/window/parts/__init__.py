"""Ready-made parts: placed, and asked for their sizes."""
