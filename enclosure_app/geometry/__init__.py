"""Numbers only: polylines, distances, triangles. Knows nothing of buildings; shapely stays here."""
