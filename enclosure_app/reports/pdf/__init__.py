"""The marked-up PDF: painted pages, annotations, layers and bookmarks."""
