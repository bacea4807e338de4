"""In what units a drawing is drawn."""
