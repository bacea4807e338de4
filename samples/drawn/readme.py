"""Writes README.md: the story of the samples, the caution, and the table of faults."""

from drawn.expected import Expected

_HEAD = """\
# Sample drawings

**Caution.** These details are for trying the program. They are not for building: they have been
checked by no engineer and by no authority, and no climate, load, fire or energy rule stands behind
them. What is built follows the code in force where the building stands and the drawings of somebody
licensed to make them. Water or vapour that is shut in rots timber and grows mould; work on roofs and
scaffolds is work at height: both are for people who know how.

The place is invented. *Varrowmoor Field Station* is a small research station on a wet moor above the
tree line, for the (also invented) Varrowmoor Upland Weather Trust. Two offices draw for it:

| office | draws in | layers | layer map | envelope |
| --- | --- | --- | --- | --- |
| Morrowin Drawing Office | inches, once in feet | `A-DETL-...` | `layers.toml` | one vapour-tight sheet on the plywood, all insulation outside it |
| Studio Kestavik | millimetres, once in metres | plain words | `layers-second-office.toml` | vapour sheet on the structure, insulation, water sheet on the insulation |

Each detail comes sound and faulty, and the faulty one has nothing wrong with it but what the last table
tells. To try one:

    enclosure-app check samples/parapet-faulty.dxf --layers samples/layers-second-office.toml

Drawings in the oldest format (R12) cannot say their units: add `--units in` or `--units mm` as the
table says. `expected.toml` holds the same in a form for tests. `python samples/make_samples.py` writes
every file here that is no script (this page too), the same bytes on each run.

## The drawings

| drawing | units | version | layer map |
| --- | --- | --- | --- |
"""
_FAULTS = """
## The faults

Places are where the fault was made, in the drawing's own units and in millimetres. A finding may lie
some way along a sheet or a lap from there (`within_mm` in `expected.toml`).

| drawing | section | rule | control | x, y in the drawing | x, y in mm | what is wrong |
| --- | --- | --- | --- | --- | --- | --- |
"""


def readme(told: list[Expected]) -> str:
    """Return the text of README.md."""
    drawings = [
        f"| {e.file} | {e.units} | {e.version}{' binary' if e.binary else ''} | {e.layer_map} |"
        for e in told
    ]
    faults = [row for e in told for row in _rows(e)]
    return _HEAD + "\n".join(drawings) + "\n" + _FAULTS + "\n".join(faults) + "\n"


def _rows(e: Expected) -> list[str]:
    rows = []
    for fault in e.faults:
        x, y = fault.at_mm
        own = f"{x / e.unit_mm:.2f}, {y / e.unit_mm:.2f}"
        rows.append(
            f"| {e.file} | {fault.section} | {fault.rule} | {fault.control} | {own} |"
            f" {x:.0f}, {y:.0f} | {fault.told} |"
        )
    return rows
