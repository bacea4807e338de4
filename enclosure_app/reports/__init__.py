"""What goes out: text for people, JSON for programs, marked-up sheets."""
