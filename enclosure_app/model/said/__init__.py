"""What people say, each saying as one frozen value: verdicts, remarks, what was seen, sign-offs."""
