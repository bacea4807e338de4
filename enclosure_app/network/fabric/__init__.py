"""The pieces of one control as numbers, and where their rims meet."""
