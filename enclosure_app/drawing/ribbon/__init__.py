"""A layer unrolled along its length."""
