"""How marks that this program wrote into a drawing are told from what the office drew.

They stand on layers whose names begin with `PREFIX`, and each carries extended data under the name
`APPLICATION`. Checking passes them over, so that a marked drawing is judged like the unmarked one,
and the next marking replaces them. What a person drew on such a layer carries none: it is passed
over too, but said so, and never removed.
"""

PREFIX = "ENCLOSURE-CHECK-"
APPLICATION = "ENCLOSURE_CHECK"


def is_own_layer(name: str) -> bool:
    """Whether a layer is one of those that marks are written on, in any case of letters."""
    return name[: len(PREFIX)].upper() == PREFIX
