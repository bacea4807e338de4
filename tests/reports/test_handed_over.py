"""What is gathered from one project: its tables and the order for its BCF file."""

from dataclasses import replace
from datetime import UTC, datetime

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.reports.handed_over import HandedOver, bcf_of, by_drawing, tables_of
from tests.drawing import eave
from tests.reports.decided import GONE, MENDED, PHOTOGRAPHS, SILL, result

NOW = datetime(2026, 3, 5, 9, 30, tzinfo=UTC)
PROJECT = Project(
    "Boathouse", Units.MM, (eave.section(),), "boathouse.dxf", decisions=(MENDED, GONE),
    photographs=PHOTOGRAPHS, id="1f2e",
)  # fmt: skip
HANDED = HandedOver(PROJECT, result(), load_limits())


def test_tables_hold_the_findings_the_site_list_and_what_to_beware_of() -> None:
    made = tables_of([HANDED], NOW)
    assert len(made.findings.rows) == 7
    assert len(made.site.rows) > 10
    assert made.about[:2] == ("Drawings: boathouse.dxf", "Written: 2026-03-05 09:30 UTC")
    assert made.about[2].startswith("This sheet is an aid to judgement.")
    assert made.photographs == PHOTOGRAPHS


def test_what_was_said_without_deciding_is_in_the_table_with_its_photographs() -> None:
    name, key = eave.section().name, eave.SHORT.key
    said = (
        Remark(key, "Per", "2026-03-02T10:15:00+02:00", "Ask the roofer.", name),
        Remark(key, "Ida", "2026-03-03T08:00:00+02:00", "", name, photographs=(SILL.key,)),
        Remark(key, "Per", "2026-03-02T10:15:00+02:00", "Elsewhere.", "another section"),
    )
    handed = replace(HANDED, project=replace(PROJECT, remarks=said, photographs={SILL.key: SILL}))
    made = tables_of([handed], NOW).findings
    heads = [column.head for column in made.columns]
    column, by_key = heads.index("Also said"), heads.index("Key")
    told = {row[by_key]: row[column] for row in made.rows}
    assert told.pop(key) == "Per, 2026-03-02: Ask the roofer.\nIda, 2026-03-03: (IMG_0042.jpg)"
    assert set(told.values()) == {None}


def test_what_was_seen_on_site_is_in_the_site_list() -> None:
    key = HANDED.site_lists[0].asked.places[0].items[0][0]
    look = SiteCheck(key, Seen.IN_ORDER, "Ida", section=eave.section().name)
    handed = replace(HANDED, project=replace(PROJECT, site_checks=(look,)))
    (listed,) = handed.site_lists
    assert listed.seen == {key: look}


def test_the_order_for_bcf_knows_all_that_was_said() -> None:
    (found,), job = bcf_of([HANDED], NOW)
    assert (job.project, job.when, job.scope, found.scope) == ("Boathouse", NOW, "1f2e", "1f2e")
    assert job.photographs == PHOTOGRAPHS
    assert found.history(MENDED.key, eave.section().name) == (MENDED,)
    assert found.history("gap:other", eave.section().name) == ()
    untitled = replace(HANDED, project=replace(PROJECT, title=""))
    assert bcf_of([untitled], NOW)[1].project == "boathouse"


def test_several_projects_are_one_bcf_file_each_with_what_was_said_of_it() -> None:
    other = replace(HANDED, project=replace(PROJECT, title="Sauna", decisions=(), id="77aa"))
    found, job = bcf_of([HANDED, other], NOW)
    assert job.project == "Boathouse, Sauna"
    assert [each.scope for each in found] == ["1f2e", "77aa"]
    assert job.scope not in ("1f2e", "77aa")
    assert job.scope == bcf_of([HANDED, other], NOW)[1].scope
    assert found[1].history(MENDED.key, eave.section().name) == ()


def test_what_was_found_is_told_drawing_by_drawing() -> None:
    one, two = (
        eave.result(section=replace(eave.section(), name=name, file=file))
        for name, file in (("A", ""), ("B", "roof.dxf"))
    )
    apart = by_drawing(replace(result(), sections=(one, two, one)))
    assert [(each.drawing.file, each.sections) for each in apart] == [
        ("boathouse.dxf", (one, one)),
        ("roof.dxf", (two,)),
    ]
    assert [s.name for s in apart[1].drawing.sections] == ["B"]
    assert by_drawing(replace(result(), sections=()))[0].drawing.file == "boathouse.dxf"
