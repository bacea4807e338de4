"""What is wrong: the list, the verdicts, the rules' own pages."""
