"""What reviewers answered in a marked-up PDF."""
