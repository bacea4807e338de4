"""What comes in and is kept: DXF drawings, layer maps, the catalogue of products, rule books."""
