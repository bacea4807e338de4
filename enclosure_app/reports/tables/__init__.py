"""Findings and the site list as tables."""
