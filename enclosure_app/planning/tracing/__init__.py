"""Guided tracing: from clicks to a run along drawn lines."""
