"""What is done beside the window, on a thread or in a process of its own."""
