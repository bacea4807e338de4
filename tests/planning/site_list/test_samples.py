"""The site lists of the samples: every joint on a trace is looked at, in words, under its own key."""

from collections.abc import Iterator
from itertools import combinations
from math import dist

import pytest

from enclosure_app.checker import check_drawing
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.report import Joint, SectionResult
from enclosure_app.network.joints.joints import joined_in_works
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.resources import sample

LIMITS = load_limits()
FIRST, SECOND = "layers.toml", "layers-second-office.toml"
SAMPLES = [
    ("window.dxf", FIRST),
    ("pipe-through-wall-faulty.dxf", FIRST),
    ("wall-base.dxf", FIRST),
    ("floor-line-faulty.dxf", FIRST),
    ("eave-overhang.dxf", FIRST),
    ("balcony-ledger.dxf", FIRST),
    ("eave-flush.dxf", SECOND),
    ("parapet-faulty.dxf", SECOND),
    ("roof-to-wall.dxf", SECOND),
    ("rake.dxf", SECOND),
    ("ridge.dxf", SECOND),
]


def sections(file: str, layers: str) -> tuple[SectionResult, ...]:
    options = ReadOptions(layer_map=load_layer_map(sample(layers)))
    return check_drawing(read_drawing(sample(file), options), LIMITS).sections


def on_traces(result: SectionResult) -> Iterator[Joint]:
    """Yield the joints on the traces, but for what comes joined from the works."""
    for layer in result.layers.values():
        for joint in layer.joints:
            products = [
                result.section.product(result.section.by_name[n]) for n in (joint.a, joint.b)
            ]
            if joint.on_trace and not joined_in_works(*products):
                yield joint


@pytest.mark.parametrize(("file", "layers"), SAMPLES)
def test_every_joint_on_a_trace_is_looked_at(file: str, layers: str) -> None:
    for result in sections(file, layers):
        places = [set(place.pieces) for place in site_list(result, LIMITS).places]
        missed = [
            (joint.a, joint.b, joint.kind)
            for joint in on_traces(result)
            if not any({joint.a, joint.b} <= pieces for pieces in places)
        ]
        assert missed == []


@pytest.mark.parametrize(("file", "layers"), SAMPLES)
def test_every_item_has_a_key_of_its_own_and_whole_sentences(file: str, layers: str) -> None:
    for result in sections(file, layers):
        listed = site_list(result, LIMITS)
        keys = [key for place in listed.places for key, _ in place.items]
        assert keys
        assert len(keys) == len(set(keys))
        names = set(result.section.by_name)
        for place in listed.places:
            assert set(place.pieces) <= names
            texts = [place.title, *(q.text for q in place.questions), *place.cautions]
            assert not any("{" in text or "  " in text for text in texts)
            assert place.title[0].isupper()


@pytest.mark.parametrize(("file", "layers"), SAMPLES)
def test_no_strip_is_asked_about_twice(file: str, layers: str) -> None:
    """One sheet is pressed down once at a place, whatever lies below it there."""
    for result in sections(file, layers):
        pressed = [
            (place.pieces[0], place.at)
            for place in site_list(result, LIMITS).places
            if place.key.startswith("lap:")
            and any(question.name == "pressed-down" for question in place.questions)
        ]
        for (one, here), (other, there) in combinations(pressed, 2):
            assert one != other or dist(here, there) > 50.0


PARAPET = {
    "seam": "single-ply roof membrane",
    "held-below": "coping",
    "fall": "coping",
}


def test_a_parapet_is_asked_for_what_a_roofer_and_a_plumber_do_there() -> None:
    (result,) = sections("parapet-faulty.dxf", SECOND)
    asked = {
        (question.name, place.title)
        for place in site_list(result, LIMITS).places
        for question in place.questions
    }
    for name, what in PARAPET.items():
        titles = [title.lower() for each, title in asked if each == name]
        assert titles
        assert all(what in title for title in titles), titles
    assert not any(
        "studs" in q.text for p in site_list(result, LIMITS).places for q in p.questions
    )
