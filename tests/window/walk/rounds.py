"""A round of stops made by hand: the boathouse's findings, a tape before them, a lap after them."""

from enclosure_app.model.product import Control
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.planning.site_list.places import SitePlace, said
from enclosure_app.planning.site_list.questions import CENTRED, LAP_WIDTH, PRESSED
from enclosure_app.window.walk.stops import Round, round_of
from tests.drawing import eave

TAPE = SitePlace(
    key="bead:T",
    title="Tape on wall sheet",
    controls=(Control.WATER, Control.AIR),
    pieces=("T", "W"),
    at=(0.0, 900.0),
    along=0.0,
    questions=said([PRESSED, CENTRED]),
    extent=(((0.0, 850.0), (0.0, 950.0)),),
    cautions=("Mind the edge.",),
)
LAP = SitePlace(
    key="lap:A.high+B.low",
    title="Wall sheet over coating",
    controls=(Control.WATER,),
    pieces=("B", "A"),
    at=(0.0, 300.0),
    along=1e6,
    questions=said([LAP_WIDTH]),
)


def eave_round(**seen: SiteCheck) -> Round:
    """Return the round of the boathouse's findings, a tape before them and a lap after them."""
    result = eave.result()
    return round_of(result, SiteList(result.section.name, (TAPE, LAP)), dict(seen))
