"""What a drawing says, as frozen values: sections, pieces, products, findings, reports."""
