"""A revised drawing laid over the one that is open: looked at, asked about, taken over as one step."""
