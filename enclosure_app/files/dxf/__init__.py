"""The office's drawing: what stands in a DXF file and where it lies."""
