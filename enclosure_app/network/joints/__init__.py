"""Joints: where pieces meet, how they lap, and whether they are sealed."""
