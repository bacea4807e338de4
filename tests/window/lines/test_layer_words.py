"""What is said of a layer, in words."""

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.guesses import guess_of
from enclosure_app.model.layer import Role
from enclosure_app.window.lines.layer_words import (
    ROLE_TIPS,
    ROLES,
    beside_words,
    chosen_words,
    difference_word,
    drawn_words,
    guessed_key,
    meant_word,
    why_words,
)
from enclosure_app.window.lines.layers_told import LayerTold

PRODUCTS = load_products()


def test_every_role_has_a_name_and_says_what_it_does() -> None:
    assert set(ROLES) == set(ROLE_TIPS) == {*Role}
    assert meant_word(Role.BREAK, PRODUCTS) == "Break lines"
    assert meant_word("felt", PRODUCTS) == "Asphalt felt on the wall"


def test_what_a_layer_is_stands_beside_what_its_name_suggests() -> None:
    guess = guess_of("A-GLAZ", PRODUCTS)
    assert guessed_key(guess) == "glass"
    assert beside_words("glass", guess, PRODUCTS) == "as named, likely"
    assert beside_words(Role.LINEWORK, guess, PRODUCTS) == "named as glazing?"
    assert beside_words("glass", None, PRODUCTS) == ""
    assert difference_word("glass", guess) == "as named"
    assert difference_word("felt", guess) == "not as named"
    assert difference_word("felt", None) == ""


def test_why_names_the_words_and_what_else_they_may_mean() -> None:
    assert why_words(guess_of("A-GLAZ", PRODUCTS), PRODUCTS) == (
        "“glaz” in its name suggests glazing: likely."
    )
    told = why_words(guess_of("Plywood glass", PRODUCTS), PRODUCTS)
    assert told.endswith("doubtful. Other words suggest glazing.")
    assert why_words(None, PRODUCTS) == "Its name says nothing of what is drawn on it."


def test_how_much_is_on_a_layer() -> None:
    assert drawn_words(1, 0) == "1 line"
    assert drawn_words(0, 2) == "2 texts"
    assert drawn_words(3, 1) == "3 lines, 1 text"
    assert drawn_words(0, 0) == "0 lines"


def test_what_is_said_of_the_layers_that_are_chosen() -> None:
    guess = guess_of("A-GLAZ", PRODUCTS)
    glaz = LayerTold("A-GLAZ", 3, 0, "glass", guess, narrower=1, by_hand=2)
    other = LayerTold("X", 4, 1, Role.LINEWORK, None)
    assert chosen_words([], [], PRODUCTS).startswith("Choose a row")
    assert chosen_words([], ["A", "B"], PRODUCTS) == "What is picked is on A, B."
    assert chosen_words([glaz, other], [], PRODUCTS) == "2 layers: 7 lines, 1 text."
    assert chosen_words([glaz], ["B"], PRODUCTS) == (
        "“glaz” in its name suggests glazing: likely. The map says otherwise of some of its "
        "lines, by how these are drawn. By hand, other products were given: 2."
    )
