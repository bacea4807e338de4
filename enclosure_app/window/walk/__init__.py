"""The walk: going through a section on site, one place at a time, with a tablet or with keys."""
