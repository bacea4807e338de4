"""Pictures and PDF pages to lie under a drawing."""
