"""Another copy of the project made one with the one that is open: counted, chosen from, one step."""
