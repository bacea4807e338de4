"""Loose lines joined, and lines cut along outlines."""
