"""Writes an office's layer map: what each of its layers means."""

from drawn.office import Office

_HEAD = """\
# The layer map of {name}: what each layer of its sample drawings means.
# Written by make_samples.py; the first row that matches a layer's name holds.
"""
_OWN = {
    "window-frame": """\
[products.window-frame]
name = "Window unit with insulating glass and thermal break"
controls = ["water", "air", "vapour", "heat"]
bond = "rigid"
kind = "opening"
drawn = "area"
""",
    "pre-insulated-pipe": """\
[products.pre-insulated-pipe]
name = "Pipe in an insulating sleeve"
controls = ["water", "air", "vapour", "heat"]
bond = "rigid"
kind = "penetration"
drawn = "area"
""",
}
_ROLES = {
    "frame": "frame",
    "break": "break",
    "note": "note",
    "pattern": "ignore",
    "dimension": "note",
    "title": "note",
    "beyond": "ignore",
}


def layer_map(office: Office) -> str:
    """Return the text of the office's layer map."""
    blocks = [_HEAD.format(name=office.name)]
    blocks += [table for key, table in _OWN.items() if key in office.products]
    blocks += [_row(office.roles[role], "role", meant) for role, meant in _ROLES.items()]
    blocks += [_row(layer, "product", key) for key, layer in office.products.items()]
    return "\n".join(blocks)


def _row(layer: str, what: str, value: str) -> str:
    return f'[[layers]]\nmatch = "{layer}"\n{what} = "{value}"\n'
