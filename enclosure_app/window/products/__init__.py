"""The list of products, and the form of the office's own."""
