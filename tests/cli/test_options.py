"""What is typed for reading is understood, or refused with how to type it."""

import click
import pytest
from click.testing import CliRunner

from enclosure_app.cli.options import reading_options


@click.command()
@reading_options
def command(**asked: object) -> None:
    click.echo(repr({name: value for name, value in asked.items() if value}))


def test_points_and_levels_are_read() -> None:
    typed = ["--inside", "1,2.5", "--inside", "-3, 4", "--severity", "gap=doubt", "--units", "in"]
    done = CliRunner().invoke(command, typed)
    assert done.exit_code == 0
    assert "'inside': ((1.0, 2.5), (-3.0, 4.0))" in done.output
    assert "'severity': (('gap', 'doubt'),)" in done.output
    assert "'units': 'in'" in done.output


@pytest.mark.parametrize(
    ("typed", "sentence"),
    [
        (["--outside", "12"], "12 is not a point; type two numbers as in 120,35.5."),
        (["--outside", "1,inf"], "1,inf is not a point"),
        (["--severity", "gap=loud"], "gap=loud sets no level; type it as in gap=doubt"),
        (["--units", "yard"], "'yard' is not one of"),
    ],
)
def test_what_cannot_be_understood_is_refused(typed: list[str], sentence: str) -> None:
    done = CliRunner().invoke(command, typed)
    assert done.exit_code != 0
    assert sentence in " ".join(done.output.replace("│", " ").split())
