"""The gestures, one a file: each watches the mouse and ends in at most one step of undo."""
