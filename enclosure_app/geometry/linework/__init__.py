"""Lines that meet, and the ways along them."""
