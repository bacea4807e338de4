"""The office's drawing: what stands in a DXF file and where it lies."""

import logging

# The library looks for fonts when it is imported, and logs that it cannot keep them where a home
# may not be written to; nothing here needs them.
logging.getLogger("ezdxf").addHandler(logging.NullHandler())
