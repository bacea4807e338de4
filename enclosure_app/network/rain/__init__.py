"""Where the rain runs: what it meets, where it stands, drips and gets in."""
