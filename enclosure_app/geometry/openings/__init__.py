"""The widest way through what is drawn, over a triangulation of what is empty."""
