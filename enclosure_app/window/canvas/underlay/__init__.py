"""Pictures that lie under the drawing, as the canvas shows and moves them."""
