"""A section as it is drawn: sheets and boards, laps, flags, rain and the trace."""
