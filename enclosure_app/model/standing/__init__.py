"""What stands today of all that was said, and of which finding it is said now."""
