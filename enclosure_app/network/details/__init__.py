"""What is asked of one kind of place: eaves, upturns, passages, how a lap drains."""
