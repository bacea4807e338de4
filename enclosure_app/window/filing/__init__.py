"""Files: opened, saved, kept against a crash, printed and handed over."""
