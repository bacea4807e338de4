"""Findings as BCF, for those who coordinate the building's model."""
