"""Older project files are brought up to the newest format."""

from enclosure_app.files.project.migrations import FORMAT, STEPS, migrated


def test_older_formats_are_brought_up_step_by_step() -> None:
    steps = {
        1: lambda table: {**table, "colour": table["color"]},
        2: lambda table: {k: v for k, v in table.items() if k != "color"},
    }
    assert migrated({"color": "red"}, 1, 3, steps) == {"colour": "red"}
    assert migrated({"colour": "red", "color": ""}, 2, 3, steps) == {"colour": "red"}
    assert {*STEPS} == {*range(1, FORMAT)}


def test_verdicts_of_format_1_are_named_and_each_follows_the_one_before() -> None:
    said = [
        {"key": "gap:a", "state": "to be mended", "who": "Ida"},
        {"key": "gap:b", "state": "mended"},
        {"key": "gap:a", "state": "mended", "who": "Ida", "section": "Eave"},
        {"key": "gap:a", "state": "mended", "who": "Ida", "section": "Ridge"},
    ]
    table = migrated({"title": "House", "decisions": said}, 1)
    names = [each["id"] for each in table["decisions"]]
    assert len({*names, table["id"]}) == 5
    assert [each["after"] for each in table["decisions"]] == [[], [], names[:1], names[:1]]
    assert migrated({"title": "House", "decisions": said}, 1) == table  # as in another copy


def test_a_damaged_file_of_format_1_is_left_for_the_reader_to_refuse() -> None:
    for damaged in ({"decisions": [5]}, {"decisions": {}}, {}):
        assert migrated(damaged, 1).get("decisions") == damaged.get("decisions")
