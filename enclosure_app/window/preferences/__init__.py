"""Preferences: the rules, the figures, and what is the person's own."""
