"""Older project files are brought up to the newest format."""

from enclosure_app.files.project_migrations import FORMAT, STEPS, migrated


def test_older_formats_are_brought_up_step_by_step() -> None:
    steps = {
        1: lambda table: {**table, "colour": table["color"]},
        2: lambda table: {k: v for k, v in table.items() if k != "color"},
    }
    assert migrated({"color": "red"}, 1, 3, steps) == {"colour": "red"}
    assert migrated({"colour": "red", "color": ""}, 2, 3, steps) == {"colour": "red"}
    assert {*STEPS} == {*range(1, FORMAT)}
