"""The window: open a drawing, say what its lines are, and watch it being judged. Qt lives here."""
