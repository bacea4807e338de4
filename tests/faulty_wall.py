"""A section of twenty pieces with one fault of each of six rules, for tests of the whole checker.

A low roof comes in from the left and turns up a wall; the outside is on the left. Lengths are mm.
"""

from tests.rules.junctions import box, run, section

LEFT, RIGHT, BOTTOM, TOP = -600.0, 600.0, -800.0, 1400.0
FRAME = ((LEFT, BOTTOM), (RIGHT, BOTTOM), (RIGHT, TOP), (LEFT, TOP))
OUTSIDE, INSIDE = (-400.0, 900.0), (400.0, 200.0)
OPEN = "self-adhered-permeable"

LAYERS = (
    run("roof", "single-ply-roofing", (LEFT, -12), (0, 0), (0, 120)),  # turns up 120: too low
    run("w1", OPEN, (-4, 60), (-4, 300)),
    run("w2", "housewrap", (-8, 240), (-8, 500)),  # nothing seals its lap over w1
    run("w3", OPEN, (-12, 420), (-12, 640)),
    run("w4", OPEN, (-16, 610), (-16, 800)),  # laps w3 by 30: too short
    run("w5", OPEN, (-12, 740), (-12, 980)),  # comes down behind w4: reversed
    box("pipe", "pipe", (-120, 981), (300, 1021)),  # nothing seals it to w5 and w6
    run("w6", OPEN, (-12, 1022), (-12, 1150)),
    run("w7", OPEN, (-12, 1175), (-12, TOP)),  # a gap of 25 below it
    run("kraft", "kraft-facing", (140, BOTTOM), (140, TOP)),
    box("wool", "mineral-wool", (20, BOTTOM), (130, TOP)),
)

OTHERS = (
    box("sheathing", "plywood", (2, BOTTOM), (14, TOP)),
    box("stud", "framing", (150, BOTTOM), (290, TOP)),
    box("lining", "gypsum-board", (295, BOTTOM), (308, TOP)),
    box("deck", "roof-deck", (LEFT, -60), (-5, -30)),
    box("rafter", "framing", (LEFT, -240), (-5, -60)),
    run("siding", "lap-siding", (-70, 200), (-70, 940)),
    run("upper siding", "lap-siding", (-70, 1060), (-70, TOP)),
    box("batten", "battens", (-60, 220), (-40, 930)),
    box("upper batten", "battens", (-60, 1070), (-40, TOP)),
)

WALL = section(*LAYERS, *OTHERS, frame=FRAME, outside=[OUTSIDE], inside=[INSIDE])
