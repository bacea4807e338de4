"""Projects of every kind, made at random; all of them can be kept."""

from types import MappingProxyType

from hypothesis import strategies as st

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import books, limit_units
from enclosure_app.model.drawing import Note, NoteLevel, Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text
from enclosure_app.model.underlay import Underlay

texts = st.text(max_size=8)
numbers = st.floats(-1e9, 1e9) | st.integers(-1000, 1000)
figures = st.none() | st.floats(0, 1e6)
places = st.tuples(numbers, numbers)
pairs = st.tuples(places, places)


def many(one: st.SearchStrategy, least: int = 0, most: int = 3) -> st.SearchStrategy:
    return st.lists(one, min_size=least, max_size=most).map(tuple)


rings = many(places, 3, 5)
shapes = st.builds(Line, many(places, 2, 5), numbers, st.booleans()) | st.builds(
    Area, rings, many(rings, 0, 2)
)
downs = st.sampled_from([None, (0.0, -1.0), (0.6, -0.8), (1, 0)])


def _products(draw: st.DrawFn) -> MappingProxyType[str, Product]:
    """The program's products, with some more and some changed."""
    keys = draw(st.sets(st.sampled_from(["housewrap", "osb", "ours", "häuschen"]), max_size=2))
    own = {
        key: draw(
            st.builds(
                Product,
                key=st.just(key),
                name=texts,
                controls=st.frozensets(st.sampled_from(Control)),
                bond=st.sampled_from(Bond),
                kind=st.sampled_from(Kind),
                min_lap_mm=figures,
                thickness_mm=figures,
                permeance_ng=figures,
                sd_m=figures,
                conductivity=figures,
                source=texts,
                confirmed=st.booleans(),
            )
        )
        for key in sorted(keys)
    }
    return MappingProxyType({**load_products(), **own})


strokes = st.builds(
    Stroke,
    many(places),
    texts,
    texts,
    linetype=texts,
    color=st.integers(1, 255),
    block=texts,
    width=numbers,
    filled=st.booleans(),
)
rows = st.builds(
    LayerRow,
    match=texts,
    product=st.none() | texts,
    role=st.none() | st.sampled_from(Role),
    linetype=st.none() | texts,
    color=st.none() | st.integers(1, 255),
    block=st.none() | texts,
    handles=many(texts),
)


@st.composite
def sections(draw: st.DrawFn, products: MappingProxyType[str, Product] | None = None) -> Section:
    held = _products(draw) if products is None or draw(st.booleans()) else products
    names = draw(st.lists(texts, max_size=4, unique=True))
    keys = st.sampled_from([*held][-4:] + [*held][:3])
    pieces = [
        Piece(name, draw(keys), draw(shapes), draw(many(texts)), draw(texts)) for name in names
    ]
    sealed = draw(st.frozensets(st.tuples(texts, texts).map(sorted).map(tuple), max_size=2))
    return Section(
        draw(texts),
        draw(rings),
        tuple(pieces),
        held,
        draw(many(places)),
        draw(many(places)),
        draw(downs),
        draw(st.booleans()),
        draw(many(st.builds(Break, pairs, pairs), 0, 2)),
        sealed,
        draw(many(strokes)),
        draw(many(st.builds(Text, texts, places, numbers, numbers, texts, texts))),
        draw(many(strokes)),
    )


SAID = ("key", "who", "when", "remark", "section", "about", "revision", "id")
photographs = st.builds(
    Photograph, st.binary(max_size=20), st.tuples(*[st.integers(1, 9)] * 2), texts, texts
)
subjects = st.builds(Subject, texts, texts, texts)
links = st.builds(Carried, subjects, subjects, st.booleans(), texts, texts, texts, many(texts))
questions = st.builds(
    Question, subjects, texts, texts, texts, st.none() | places, many(texts), texts
)
sign_offs = st.builds(
    SignOff, texts, texts, texts, texts, texts, st.booleans(), texts, texts, many(texts)
)


@st.composite
def projects(draw: st.DrawFn) -> Project:
    shared = _products(draw)
    pictures = draw(st.dictionaries(texts, photographs, max_size=2))
    shown = many(st.sampled_from([*pictures])) if pictures else st.just(())
    said = {**dict.fromkeys(SAID, texts), "photographs": shown}
    after = many(texts)
    kinds = st.sampled_from(["png", "jpeg", "pdf"])
    underlays = st.builds(
        Underlay,
        texts,
        kinds,
        st.binary(max_size=20),
        places,
        numbers,
        numbers,
        st.integers(0, 9),
        size=places,
        paper_mm=numbers,
        to_scale=st.booleans(),
        section=texts,
        key=texts,
        shown=st.booleans(),
        locked=st.booleans(),
        strength=numbers,
    )
    return Project(
        title=draw(texts),
        units=draw(st.sampled_from(Units)),
        sections=draw(many(sections(shared))),
        source=draw(texts),
        notes=draw(many(st.builds(Note, st.sampled_from(NoteLevel), texts, texts))),
        book=draw(st.sampled_from(["", *books()])),
        figures=MappingProxyType(
            draw(st.dictionaries(st.sampled_from([*limit_units()]), numbers, max_size=2))
        ),
        severities=MappingProxyType(
            draw(st.dictionaries(texts, st.sampled_from(Severity), max_size=2))
        ),
        decisions=draw(
            many(st.builds(Decision, state=st.sampled_from(State), after=after, **said))
        ),
        remarks=draw(many(st.builds(Remark, **said))),
        site_checks=draw(
            many(st.builds(SiteCheck, seen=st.sampled_from(Seen), after=after, **said))
        ),
        sign_offs=draw(many(sign_offs)),
        photographs=MappingProxyType(pictures),
        revision=draw(texts),
        carried=draw(many(links)),
        questions=draw(many(questions)),
        underlays=draw(many(underlays, 0, 2)),
        layouts=draw(many(texts)),
        layers=draw(many(rows)),
    )
