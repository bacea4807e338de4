"""What a pointer catches, and what it means."""
