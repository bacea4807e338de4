"""What a person plans with: tracing, notes, ready-made parts, the site list, revisions, copies."""
