"""The words of the trade as the window says them."""
