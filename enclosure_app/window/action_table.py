"""Every action of the window in one table: its menu, its words, its keys, its tip."""

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

CONTEXT = "Actions"


@dataclass(frozen=True, slots=True)
class Row:
    """One action: `name` is that of the method that does it; "" is a line between others.

    `choice` names a group of which one is always checked; `check` is checked or not.
    """

    menu: str
    name: str = ""
    text: str = ""
    keys: tuple[str, ...] = ()
    tip: str = ""
    check: bool = False
    choice: str = ""


FILE, EDIT, DRAW, VIEW, CHECK, HELP = (
    "&File",
    "&Edit",
    "&Draw",
    "&View",
    "&Check",
    "&Help",
)

TABLE: tuple[Row, ...] = (
    Row(FILE, "new_sheet", "New empty sheet", ("Ctrl+N",)),
    Row(FILE, "open_file", "Open…", ("Ctrl+O",),
        "Open a DXF drawing or a project"),
    Row(FILE, "recent"),
    Row(FILE, "samples"),
    Row(FILE, "parts"),
    Row(FILE),
    Row(FILE, "use_layer_map", "Use a layer map…", (),
        "Take what the layers are from a file of the office; what you did by hand stays"),
    Row(FILE, "save_layer_map", "Save the layer map…", (),
        "Keep what you said of the layers, and your own products, for the next drawing"),
    Row(FILE),
    Row(FILE, "put_underlay", "Put a picture or PDF page under the drawing…", ("Ctrl+U",),
        "A scan, a photograph or a page of a PDF, to be brought to scale and traced"),
    Row(FILE),
    Row(FILE, "save", "Save", ("Ctrl+S",)),
    Row(FILE, "save_as", "Save as…", ("Ctrl+Shift+S",)),
    Row(FILE),
    Row(FILE, "write_pdf", "Write the marked-up sheet as PDF…", ("Ctrl+E",)),
    Row(FILE, "preview", "Print preview", ("Ctrl+Shift+P",)),
    Row(FILE, "print_sheets", "Print…", ("Ctrl+P",)),
    Row(FILE),
    Row(FILE, "close", "Close", ("Ctrl+Q",)),
    Row(EDIT, "undo"),
    Row(EDIT, "redo"),
    Row(EDIT),
    Row(EDIT, "correct_units", "Correct the drawing's units…", (),
        "The drawing was read in the wrong units: everything becomes larger or smaller by one factor"),
    Row(EDIT),
    Row(EDIT, "delete", "Delete what is picked", ("Del",)),
    Row(EDIT, "pick_all", "Pick everything", ("Ctrl+A",)),
    Row(EDIT, "pick_same", "Pick all of the same product", ("Ctrl+Shift+A",)),
    Row(EDIT, "pick_none", "Pick nothing", ("Ctrl+D",)),
    Row(EDIT),
    Row(EDIT, "preferences", "Preferences…", ("Ctrl+,",),
        "How loud each rule is, required figures, units, your name, motion, light and dark"),
    Row(DRAW, "tool_select", "Pick", ("P",),
        "Pick sheets and lines, move and delete them", choice="tool"),
    Row(DRAW, "tool_points", "Points", ("O",),
        "Move, add and remove the points of a sheet", choice="tool"),
    Row(DRAW, "tool_trace", "Trace", ("T",),
        "Follow drawn lines from one click to another, and make them a sheet", choice="tool"),
    Row(DRAW, "tool_sheet", "Sheet", ("S",),
        "Draw a sheet, a tape or a bead from point to point", choice="tool"),
    Row(DRAW, "tool_area", "Board", ("B",),
        "Draw a board, insulation or concrete as a closed outline", choice="tool"),
    Row(DRAW, "tool_inside", "Inside", ("I",),
        "Click a place inside the building", choice="tool"),
    Row(DRAW, "tool_outside", "Outside", ("U",),
        "Click a place outside the building", choice="tool"),
    Row(DRAW, "tool_frame", "Frame", ("F",),
        "Draw the box inside which the section is judged", choice="tool"),
    Row(DRAW, "tool_measure", "Measure", ("M",),
        "Measure from place to place", choice="tool"),
    Row(DRAW, "tool_scale", "Scale of the picture", ("Shift+S",),
        "Click two places on the picture under the drawing, and type how far apart they are",
        choice="tool"),
    Row(DRAW, "tool_lay", "Move or turn the picture", ("Shift+M",),
        "From a place on the picture under the drawing to where it belongs", choice="tool"),
    Row(DRAW),
    Row(DRAW, "catching", "Catch ends, middles and crossings", ("F3",), check=True),
    Row(DRAW, "give_product", "Give what is picked the product", ("G",),
        "What is picked is made of the product chosen in the list"),
    Row(DRAW, "read_notes", "Read the notes…", ("R",),
        "Follow each note's arrow to its line, and take what the note says it is made of"),
    Row(VIEW, "fit", "Show all", ("Ctrl+0", "Home")),
    Row(VIEW, "closer", "Closer", ("Ctrl++", "Ctrl+=", "+")),
    Row(VIEW, "wider", "Wider", ("Ctrl+-", "-")),
    Row(VIEW),
    Row(VIEW, "only_all", "All layers", ("Alt+0",), choice="only"),
    Row(VIEW, "only_water", "Water alone", ("Alt+1",), choice="only"),
    Row(VIEW, "only_air", "Air alone", ("Alt+2",), choice="only"),
    Row(VIEW, "only_vapour", "Vapour alone", ("Alt+3",), choice="only"),
    Row(VIEW, "only_heat", "Heat alone", ("Alt+4",), choice="only"),
    Row(VIEW),
    Row(VIEW, "day", "Light", choice="ground"),
    Row(VIEW, "night", "Dark", choice="ground"),
    Row(VIEW, "as_system", "As the system", choice="ground"),
    Row(VIEW),
    Row(VIEW, "panels"),
    Row(VIEW, "languages"),
    Row(VIEW, "next_panel", "Next part of the window", ("F6",),
        "The keys go from the drawing to the panels, to the tools, and round again"),
    Row(VIEW, "last_panel", "Part of the window before", ("Shift+F6",)),
    Row(VIEW, "full_screen", "Full screen", ("F11",), check=True),
    Row(CHECK, "next_finding", "Next finding", ("N",)),
    Row(CHECK, "last_finding", "Finding before", ("Shift+N",)),
    Row(CHECK, "why", "Why is this a fault?", ("W",)),
    Row(CHECK),
    Row(CHECK, "decide_to_mend", "It is to be mended", ("Ctrl+1",),
        "Put down about the finding that is chosen that somebody is to mend it"),
    Row(CHECK, "decide_mended", "It is mended", ("Ctrl+2",),
        "Put down that it was mended"),
    Row(CHECK, "decide_accepted", "It may stand, because…", ("Ctrl+3",),
        "Accept it as it is, and type why"),
    Row(CHECK, "decide_no_fault", "It is not a fault, because…", ("Ctrl+4",),
        "Say how the drawing or the check misleads"),
    Row(HELP, "show_keys", "All keys on one page", ("F1",)),
    Row(HELP, "show_about", "About this program, and its limits"),
)  # fmt: skip


def say(text: str) -> str:
    """Return a text of the table in the window's language."""
    return QCoreApplication.translate(CONTEXT, text)
