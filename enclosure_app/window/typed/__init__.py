"""What is typed: lengths, angles, figures, sizes."""
