"""What a person plans with: guided tracing, notes read, ready-made parts; later courses and cut lists."""
