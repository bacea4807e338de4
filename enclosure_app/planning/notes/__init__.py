"""The drawing's notes: what they name, and the lines that they mean."""
