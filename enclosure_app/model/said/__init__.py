"""What people say, each saying as one frozen value: decisions, remarks, what was seen, sign-offs."""
