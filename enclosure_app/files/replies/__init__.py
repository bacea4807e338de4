"""What reviewers wrote into an issued PDF, read back."""
