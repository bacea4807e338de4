"""The two drawing offices: layer names, text and dimension styles, blocks, layer maps."""

from dataclasses import dataclass

import ezdxf
from ezdxf.document import Drawing
from ezdxf.lldxf.const import DXF2000

ROLES = ("frame", "break", "note", "pattern", "dimension", "title", "beyond")


@dataclass(frozen=True)
class Office:
    """How one office names its layers; `products` and `roles` give the name of each."""

    name: str
    layer_map: str
    title: str
    architect: str
    products: dict[str, str]
    roles: dict[str, str]


FIRST = Office(
    name="Morrowin Drawing Office",
    layer_map="layers.toml",
    title="MORROWIN DRAWING OFFICE",
    architect="EDDA MORROWIN, ARCHITECT",
    products={
        "self-adhered-sheet": "A-DETL-MEMB",
        "flashing-tape": "A-DETL-TAPE-FLSH",
        "seam-tape": "A-DETL-TAPE-SEAM",
        "housewrap": "A-DETL-WRAP",
        "sealant": "A-DETL-SEAL",
        "sill-gasket": "A-DETL-GSKT",
        "waterproofing-sheet": "A-DETL-WPRF",
        "bituminous-vapour-control": "A-DETL-VCTL",
        "self-adhered-underlayment": "A-DETL-UNDL-SELF",
        "underlayment": "A-DETL-UNDL-FELT",
        "eave-membrane": "A-DETL-UNDL-EAVE",
        "single-ply-roofing": "A-DETL-ROOF-MEMB",
        "metal-roofing": "A-DETL-ROOF-METL",
        "shingles": "A-DETL-ROOF-SHNG",
        "drip-edge": "A-DETL-FLSH-DRIP",
        "base-flashing": "A-DETL-FLSH-BASE",
        "head-flashing": "A-DETL-FLSH-HEAD",
        "step-flashing": "A-DETL-FLSH-STEP",
        "counter-flashing": "A-DETL-FLSH-CNTR",
        "coping": "A-DETL-FLSH-COPG",
        "plywood": "A-DETL-SHTG",
        "gypsum-board": "A-DETL-GYPB",
        "mineral-wool": "A-DETL-INSL-MWOL",
        "xps": "A-DETL-INSL-RIGD",
        "pir": "A-DETL-INSL-ROOF",
        "closed-cell-foam": "A-DETL-INSL-FOAM",
        "framing": "A-DETL-FRMG",
        "ledger": "A-DETL-FRMG-LDGR",
        "concrete": "A-DETL-CONC",
        "window-frame": "A-DETL-WNDW",
        "lap-siding": "A-DETL-SIDG",
        "fascia-board": "A-DETL-TRIM-FASC",
        "soffit": "A-DETL-TRIM-SOFF",
        "trim": "A-DETL-TRIM",
        "vented-air-space": "A-DETL-AIRS",
        "pre-insulated-pipe": "A-DETL-PIPE",
        "pipe-collar": "A-DETL-PIPE-COLR",
        "soil": "A-DETL-SOIL",
        "gravel": "A-DETL-GRVL",
    },
    roles={
        "frame": "A-DETL-LIMT",
        "break": "A-DETL-BRKL",
        "note": "A-ANNO-NOTE",
        "pattern": "A-DETL-PATT",
        "dimension": "A-ANNO-DIMS",
        "title": "A-ANNO-TTLB",
        "beyond": "A-DETL-MBND",
    },
)

SECOND = Office(
    name="Studio Kestavik",
    layer_map="layers-second-office.toml",
    title="STUDIO KESTAVIK",
    architect="IVEN TARRASK, ARCHITECT",
    products={
        "self-adhered-sheet": "Membrane strip",
        "self-adhered-permeable": "Wall sheet",
        "housewrap": "Wall wrap",
        "bituminous-vapour-control": "Vapour sheet",
        "vapour-retarder": "Vapour foil",
        "self-adhered-underlayment": "Roof sheet",
        "underlayment": "Roof underlay",
        "eave-membrane": "Eave sheet",
        "single-ply-roofing-fastened": "Roof membrane",
        "flashing-tape": "Flashing tape",
        "seam-tape": "Seam tape",
        "foil-tape": "Foil tape",
        "sealant": "Sealant",
        "waterproofing-sheet": "Tanking",
        "drip-edge": "Metal drip edge",
        "base-flashing": "Metal flashing",
        "head-flashing": "Metal head flashing",
        "apron-flashing": "Metal sill and apron",
        "coping": "Metal coping",
        "osb": "Board",
        "plywood": "Plywood",
        "gypsum-board": "Plasterboard",
        "wood-fibre": "Insulation wood fibre",
        "mineral-wool": "Insulation mineral wool",
        "pir": "Insulation roof board",
        "closed-cell-foam": "Insulation foam",
        "framing": "Timber cut",
        "ledger": "Ledger",
        "concrete": "Concrete",
        "lap-siding": "Cladding boards",
        "trim": "Trim",
        "metal-roofing": "Roof sheeting",
        "fascia-board": "Fascia",
        "vented-air-space": "Vented space",
        "pipe": "Pipe",
        "pipe-collar": "Pipe collar",
        "soil": "Ground",
    },
    roles={
        "frame": "Section frame",
        "break": "Break lines",
        "note": "Notes",
        "pattern": "Hatching",
        "dimension": "Dimensions",
        "title": "Title",
        "beyond": "Beyond",
    },
)

_COLOURS = {
    "frame": 8,
    "break": 1,
    "note": 7,
    "pattern": 8,
    "dimension": 2,
    "title": 7,
    "beyond": 9,
}
_UNITS = {1.0: 4, 25.4: 1, 304.8: 2, 1000.0: 6}


def new_drawing(office: Office, version: str, unit_mm: float) -> Drawing:
    """Return an empty drawing with the office's layers, styles and blocks."""
    doc = ezdxf.new(version)
    doc.header["$INSUNITS"] = _UNITS[unit_mm]
    doc.header["$MEASUREMENT"] = 1 if unit_mm in (1.0, 1000.0) else 0
    doc.linetypes.add("HIDDEN", [0.375, 0.25, -0.125])
    doc.styles.add("DETAIL", font="isocp.shx")
    _add_layers(doc, office)
    _add_blocks(doc)
    return doc


def add_dimension_style(doc: Drawing, text_height: float) -> None:
    """Add the office's dimension style with texts of `text_height` drawing units."""
    style = doc.dimstyles.new("DETAIL")
    style.dxf.dimtxt = text_height
    style.dxf.dimasz = text_height * 0.8
    style.dxf.dimtsz = text_height * 0.5
    style.dxf.dimexe = text_height * 0.5
    style.dxf.dimexo = text_height * 0.5
    style.dxf.dimgap = text_height * 0.4
    style.dxf.dimtad = 1
    style.dxf.dimdec = 2
    style.dxf.dimtxsty = "DETAIL"


def _add_layers(doc: Drawing, office: Office) -> None:
    heavy = doc.dxfversion >= DXF2000
    for role, layer in office.roles.items():
        doc.layers.add(layer, color=_COLOURS[role])
    for number, layer in enumerate(office.products.values()):
        added = doc.layers.add(layer, color=3 + number % 5)
        if heavy:
            added.dxf.lineweight = 35


def _add_blocks(doc: Drawing) -> None:
    """Add the crossed member, one unit square, stretched where it is put in."""
    member = doc.blocks.new("MEMBER")
    square = [(0, 0), (1, 0), (1, 1), (0, 1)]
    if doc.dxfversion >= DXF2000:
        member.add_lwpolyline(square, close=True)
    else:
        member.add_polyline2d(square, close=True)
    member.add_line((0, 0), (1, 1))
    member.add_line((0, 1), (1, 0))
