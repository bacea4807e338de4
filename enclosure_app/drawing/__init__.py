"""What is to be seen, composed without Qt: from results to marks on sheets."""
