"""Texts in the language spoken: whole sentences, names within them, numbers."""

from collections.abc import Iterator

import pytest

from enclosure_app.language import (
    ENGLISH,
    Language,
    in_sentence,
    later,
    say,
    say_count,
    speak,
    spoken,
    written,
)

GERMAN = {
    "The {layer} ends at {name}.": "Bei {name} endet die {layer}.",
    "{count} gap": "{count} Lücke",
    "{count} gaps": "{count} Lücken",
    "Felt": "Bitumenbahn",
}


@pytest.fixture
def german() -> Iterator[None]:
    speak(Language(lambda text: GERMAN.get(text, text), capitals=True, groups=" ", point=","))
    yield
    speak(ENGLISH)


def test_english_is_said_as_it_is_written() -> None:
    assert say("The {layer} ends at {name}.", layer="air layer", name="felt") == (
        "The air layer ends at felt."
    )


def test_a_text_without_values_keeps_its_braces() -> None:
    assert say("{like this}") == "{like this}"


@pytest.mark.usefixtures("german")
def test_another_language_puts_the_values_where_it_wants_them() -> None:
    said = say("The {layer} ends at {name}.", layer="Luftdichtheitsschicht", name="Bitumenbahn")
    assert said == "Bei Bitumenbahn endet die Luftdichtheitsschicht."


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize(("count", "told"), [(1, "1 Lücke"), (0, "0 Lücken"), (12, "12 Lücken")])
def test_one_and_many_are_two_texts(count: int, told: str) -> None:
    assert say_count(count, "{count} gap", "{count} gaps") == told


@pytest.mark.parametrize(("name", "inside"), [("Felt", "felt"), ("OSB", "OSB"), ("", "")])
def test_an_english_name_begins_small_within_a_sentence(name: str, inside: str) -> None:
    assert in_sentence(name) == inside


@pytest.mark.usefixtures("german")
def test_a_german_noun_keeps_its_capital_within_a_sentence() -> None:
    assert in_sentence("Felt") == "Bitumenbahn"


@pytest.mark.usefixtures("german")
def test_numbers_take_the_marks_of_the_language() -> None:
    assert written("12,345.5") == "12 345,5"
    assert say("{width:,.1f} at {place}", width=1234.5, place="3.5") == "1 234,5 at 3.5"


def test_what_is_said_later_is_the_text_itself() -> None:
    assert later("Felt") == "Felt"


def test_the_language_spoken_has_a_code() -> None:
    assert spoken() == "en"
    try:
        speak(Language(str.upper, code="de"))
        assert spoken() == "de"
    finally:
        speak(ENGLISH)
