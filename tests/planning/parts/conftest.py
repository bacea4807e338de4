"""What the tests of all parts share: a part is drawn, checked, and must be sound."""

from collections.abc import Callable

import pytest

from enclosure_app.checker import check_section
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.finding import Severity
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.planning.parts import PARTS, sizes_of

LIMITS = load_limits()
PRODUCTS = load_products()


@pytest.fixture(scope="session")
def checked() -> Callable[..., SectionResult]:
    """Return a function that draws a part and checks it."""

    def check(name: str, **sizes: float) -> SectionResult:
        (part,) = [each for each in PARTS if each.name == name]
        return check_section(part.section(part.parameters(**sizes), PRODUCTS), LIMITS)

    return check


@pytest.fixture(scope="session")
def assert_sound(checked: Callable[..., SectionResult]) -> Callable[..., None]:
    """Return a function that fails where a part has a fault, a doubt, or a layer that breaks."""

    def sound(name: str, **sizes: float) -> None:
        result = checked(name, **sizes)
        loud = [
            (each.rule, each.message, each.pieces)
            for each in result.findings
            if each.severity in (Severity.FAULT, Severity.DOUBT)
        ]
        assert loud == [], sizes
        verdicts = {control: layer.continuity for control, layer in result.layers.items()}
        assert set(verdicts.values()) == {Continuity.CONTINUOUS}, sizes
        assert len(verdicts) == 4

    return sound


@pytest.fixture(scope="session")
def extremes() -> Callable[[str], list[dict[str, float]]]:
    """Return a function that gives the usual sizes, each size at both ends, and all at one end."""

    def cases(name: str) -> list[dict[str, float]]:
        (part,) = [each for each in PARTS if each.name == name]
        sizes = sizes_of(part.parameters)
        single = [{size.name: end} for size in sizes for end in (size.low, size.high)]
        low = {size.name: size.low for size in sizes}
        return [{}, *single, low, {size.name: size.high for size in sizes}]

    return cases
