"""A drawing as if it had just been opened."""

from ezdxf.document import Drawing

from enclosure_app.files.dxf.document import Document


def opened(drawing: Drawing) -> Document:
    """Return a drawing that was not read from a file, but might have been."""
    return Document(drawing, (), 0, None, "R2010", ("Layout1",))
