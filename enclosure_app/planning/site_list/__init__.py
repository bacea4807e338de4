"""What to look at on site, place by place, whether or not anything is wrong."""
