"""The drawing as a picture, composed and painted for one look at it."""
