"""What to look at on site at each kind of place: the questions, why they are asked, and their source.

All of them are common practice without a source; what the maker of a product says goes before
them, as do local rules. Figures that come with a question are those of the rule book.
"""

from dataclasses import dataclass, replace

from enclosure_app.language import later, say

PRACTICE = later("common practice, no source")

HEIGHT = later(
    "Look only from where you stand safely: guard rails, boards and a harness where one is needed. "
    "Local rules on working at height go before this list."
)
DAMP = later(
    "Soft or stained wood, or mould? Leave it open, keep others away from it, and have it judged "
    "by a qualified person before anything is covered."
)
TRENCH = later(
    "Below ground: go into no trench, and stand at no bank, that is not shored or sloped back as "
    "local rules say."
)
LIMITS = later(
    "This list reminds; it replaces neither the makers' instructions nor local codes nor the "
    "judgement of licensed people."
)


@dataclass(frozen=True, slots=True)
class Question:
    """One thing to look at: `name` is the same in every language and never changes its meaning.

    `drawn` and `least` are lengths in mm, None where nothing is measured; `source` is where the
    question, or its figure, comes from.
    """

    name: str
    text: str
    why: str
    source: str = PRACTICE
    drawn: float | None = None
    least: float | None = None

    def said(self, **places: str) -> "Question":
        """Return the question in the language spoken, with names put in their places."""
        told = say(self.text, **places)
        return replace(self, text=told, why=say(self.why), source=say(self.source))


CLEAN = Question(
    "clean-and-dry",
    later("Was the ground dry, clean, warm enough and, where the maker asks for it, primed?"),
    later("Dust, frost and damp keep it from sticking, and nobody sees it later."),
)
PRESSED = Question(
    "pressed-down",
    later("Is it pressed down with a roller over its whole width?"),
    later("It sticks by pressure; a hand alone leaves channels of air and water."),
)
FLAT_EDGE = Question(
    "flat-edge",
    later("Does the edge lie flat, with no wrinkle and no fishmouth that leads in?"),
    later(
        "A fold at the edge is a funnel for water and air. Cut it open, press it down, patch it."
    ),
)
LAP_WIDTH = Question(
    "lap-width",
    later("Is the lap wide enough all along? Look for the line marked on the sheet."),
    later("A lap that runs out of its mark is short somewhere."),
)
METAL_WIDTH = Question(
    "lap-width",
    later("Is the lap wide enough all along? Measure at both ends and in the middle."),
    later("Metal has no line to go by, and a bowed length is short in its middle."),
)
LAP_ORDER = Question(
    "lap-order",
    later("Does {over} lie over {under}, so that water runs off over the joint?"),
    later("The sheet that goes on uphill goes on later, and over the one below."),
)
LAP_AS_DRAWN = Question(
    "lap-order",
    later("Does {over} lie over {under}, as drawn?"),
    later("Nothing shows afterwards which of the two went on first."),
)
LAP_AGAINST = Question(
    "lap-order",
    later(
        "The drawing has {over} over {under}, against the run of the water. How is it built, and "
        "does a third sheet cover the edge that faces up?"
    ),
    later("Water that runs down gets in behind an edge that faces up."),
)
SEALED_AS_DRAWN = Question(
    "sealed-as-drawn",
    later("Is the joint sealed all along, as the drawing says?"),
    later("The drawing counts on it, and the products alone do not do it."),
)
CENTRED = Question(
    "centred",
    later("Does it sit in the middle, with about the same width on each side of the joint?"),
    later("A tape that grips one side by a few millimetres lets go there first."),
)
TAPE_ENDS = Question(
    "tape-ends",
    later("Where two lengths meet, do they lap, the upper one over the lower one?"),
    later("An end that faces up catches the water that runs down the wall."),
)
BACKING = Question(
    "backing",
    later("Is there a backing rod or bond breaker behind the bead where the joint needs one?"),
    later("A bead that sticks to the back as well tears when the joint moves."),
)
TOOLED = Question(
    "tooled",
    later("Is the bead tooled against both sides, with no break, bubble or skin?"),
    later("A bead that is only laid on does not stick to both sides."),
)
BEAD_SIZE = Question(
    "bead-size",
    later("Is the bead as wide as drawn, and about half as deep as it is wide?"),
    later("Too thin it tears, too deep it cannot stretch."),
)
SQUEEZED = Question(
    "squeezed",
    later("Is the gasket squeezed all along, and whole at corners and ends?"),
    later("It seals only where it is pressed together."),
)
FASTENERS = Question(
    "fasteners",
    later("Do the fasteners sit in studs or battens, as close as the maker says?"),
    later("What is fixed to boards alone flaps in the wind and tears."),
)
CAPS = Question(
    "caps",
    later("Do the fasteners have caps or washers, flush and none torn through?"),
    later("A bare staple makes a hole that grows."),
)
ROOF_FASTENERS = Question(
    "fasteners",
    later("Do the fasteners hold in the deck, in the rows and as close as the maker says?"),
    later("Wind lifts a roof at its edges and corners first."),
)
SEAM = Question(
    "seam",
    later("Is the seam welded or stuck over its whole width, and was its edge tried all along?"),
    later("A seam that only looks closed opens with the first frost."),
)
NO_TEARS = Question(
    "no-tears",
    later("Is the sheet whole, and is every tear or spare hole taped over?"),
    later("Work that follows makes holes, and the next trade covers them."),
)
WET_THICKNESS = Question(
    "wet-thickness",
    later("Was the thickness measured wet, and written down?"),
    later("Too thin a coat has holes when it dries; afterwards it can hardly be measured."),
)
NO_PINHOLES = Question(
    "no-pinholes",
    later("Is the coat free of pinholes, thin spots and bare edges?"),
    later("Each is a hole; look across it against the light."),
)
COAT_OVER_JOINT = Question(
    "coat-over-joint",
    later("Is the joint filled or reinforced first, and the coat carried on over both sides?"),
    later("A coat alone cracks over a joint that moves."),
)
FALL = Question(
    "fall",
    later("Does it fall to the outside all along, with no place where water stands?"),
    later("Water that stands finds the next screw hole or joint."),
)
END_DAM = Question(
    "end-dam",
    later("Are its ends turned up or dammed, so that nothing runs off sideways into the wall?"),
    later("What it collects leaves at its ends."),
)
COPING_FALL = Question(
    "fall",
    later(
        "Does its top fall to the side that the drawing shows, with no place where water stands?"
    ),
    later("Water that stands finds the next screw hole or joint."),
)
BOTH_EDGES = Question(
    "drip",
    later("Do both its edges reach below what they cover, stand clear of it and bend to a drip?"),
    later("Wind drives water up under a short edge, on either side."),
)
HELD_BELOW = Question(
    "held-below",
    later("Is it held from its sides or by clips, with no screw through its top?"),
    later(
        "A hole in the top lies where the water does, and metal that cannot move tears it wide."
    ),
)
EDGE_FIXED = Question(
    "edge-fixed",
    later("Is it straight, and fixed as close as the maker says?"),
    later("Wind takes a roof from its edge; a bowed edge lets the drops run where they like."),
)
DRIP = Question(
    "drip",
    later("Does its lower edge stand clear of the face below and bend to a drip?"),
    later("Without one the drop runs back under the edge and down the wall."),
)
LENGTHS = Question(
    "lengths",
    later("Do its lengths lap each other, and is the lap sealed where it is to be?"),
    later("The drawing shows one cut; the joints of its lengths are beside it."),
)
BACK_DAM = Question(
    "back-dam",
    later("Does its back stand up behind the frame, and is the front edge left open?"),
    later("It catches what gets past the frame and has to let it out."),
)
TIGHT_CORNER = Question(
    "tight-corner",
    later("Does the sheet lie tight in the fold, with no hollow behind it?"),
    later("A sheet that spans a corner tears when somebody leans on it."),
)
FOLD_ORDER = Question(
    "fold-order",
    later("Where the fold comes to a corner, was it folded in the right order, the piece that "
          "sheds the water last?"),
    later("Three sheets meet there; one in the wrong order leads water in."),
)  # fmt: skip
NO_CUT_CORNER = Question(
    "no-cut-corner",
    later("Is no cut left open at the corner, and is each patched with a piece of its own?"),
    later("A cut that reaches the fold is a hole the size of a finger."),
)
ALL_ROUND = Question(
    "all-round",
    later("Is it sealed all round, also below and behind, where one cannot see?"),
    later("Feel it with a finger or use a mirror; the far side is the one left out."),
)
COLLAR_UNDER = Question(
    "collar-under",
    later("Does the sheet above lap over the collar's upper edge, or is that edge sealed?"),
    later("Water that runs down the sheet goes in behind an edge that lies on top."),
)
HELD_FIRM = Question(
    "held-firm",
    later("Is what goes through held firm, so that it does not work loose?"),
    later("A pipe that moves tears its collar."),
)
TIGHT_BUTT = Question(
    "tight-butt",
    later("Do the two lie tight against each other, with every gap filled?"),
    later("A gap of a finger's width lets out more warmth than it looks."),
)
MEETS_TIGHT = Question(
    "meets-tight",
    later(
        "Do the two meet with no gap, and is the joint closed with what the drawing has for it?"
    ),
    later("Air, vapour and water take the way that is left open, however narrow it is."),
)
TIGHT_ROUND = Question(
    "tight-round",
    later("Does the insulation lie tight all round it, with nothing left out below and behind?"),
    later("A gap round it is cold; the damp of the room settles there."),
)
FOAM_FULL = Question(
    "foam-full",
    later("Does the foam fill the gap all round, with no hollow and no crack along its edges?"),
    later("Foam that did not stick leaves a crack one can see against the light."),
)
FOAM_BOWED = Question(
    "foam-bowed",
    later("Did the foam leave the frame straight, and does what opens in it still open freely?"),
    later("Foam goes on swelling and pushes a frame out of true."),
)
ROUND_CORNERS = Question(
    "round-corners",
    later("Does what seals it go on unbroken round all its corners: sill, both sides and head?"),
    later(
        "The drawing shows one cut; the corners are beside it, and the lower ones hold the water."
    ),
)
SET_FIRM = Question(
    "set-firm",
    later("Does it stand plumb and firm, on blocks that do not dam the water at the sill?"),
    later("A frame that moves breaks its seals; a block right across keeps the water in."),
)
DRAINS = Question(
    "drains",
    later("Are its drain holes open, and does what gets in at the sill find its way out?"),
    later("What gets in and cannot leave goes into the wall."),
)
DRY_BEFORE_COVERED = Question(
    "dry-before-covered",
    later("Is what is about to be covered dry?"),
    later("Water that is built in stays in."),
)

QUESTIONS = tuple(each for each in globals().values() if isinstance(each, Question))
