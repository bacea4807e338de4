"""Forms of JSON values: how a value of the model is written, and read back with every mistake.

A form has two directions. `write` gives what ``json.dumps`` takes. `read` takes what
``json.loads`` gave and raises `Mistakes`, which knows every place that is wrong, not only the
first. A place is built on the way out, so that a sound file costs nothing for it.
"""

from base64 import b64decode, b64encode
from binascii import Error as Base64Error
from collections.abc import Callable, Mapping, Sequence
from dataclasses import MISSING, Field, fields
from enum import StrEnum
from itertools import chain
from math import isfinite
from types import MappingProxyType
from typing import Any, ClassVar, Generic, Protocol, TypeVar

from enclosure_app.files.maps.tables import meant
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points


class _Dataclass(Protocol):
    __dataclass_fields__: ClassVar[dict[str, Field[Any]]]


T = TypeVar("T")
R = TypeVar("R", bound=_Dataclass)
S = TypeVar("S", bound=StrEnum)
Place = tuple[str | int, ...]


class Mistakes(Exception):  # noqa: N818  a bundle of them, caught before anybody sees it
    """What is wrong with a value: places within it, each with the end of a sentence."""

    def __init__(self, *found: tuple[Place, str]) -> None:
        super().__init__(found)
        self.found = found

    def within(self, step: str | int) -> list[tuple[Place, str]]:
        """Return the mistakes as seen from one level further out."""
        return [((step, *place), text) for place, text in self.found]


def wrong(text: str) -> Mistakes:
    """Return the mistake that the value itself is wrong in this way."""
    return Mistakes(((), text))


class Form(Generic[T]):
    """How one kind of value is written and read."""

    def __init__(self, read: Callable[[Any], T], write: Callable[[T], Any]) -> None:
        self.read = read
        self.write = write


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise wrong(say("must be a text in quotes, not {shown}.", shown=shown(value)))
    return value


def _flag(value: object) -> bool:
    if not isinstance(value, bool):
        raise wrong(say("must be true or false, not {shown}.", shown=shown(value)))
    return value


def _whole(value: object) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        raise wrong(say("must be a whole number, not {shown}.", shown=shown(value)))
    return value


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise wrong(say("must be a number, not {shown}.", shown=shown(value)))
    try:
        number = float(value)
    except OverflowError:
        raise wrong(say("is too large: write a finite number.")) from None
    if not isfinite(number):
        raise wrong(say("is {number}: write a finite number.", number=number))
    return number


def _bytes(value: object) -> bytes:
    try:
        return b64decode(_text(value), validate=True)
    except (Base64Error, ValueError):
        raise wrong(
            say(
                "is not sound base64: the picture is damaged; take it from an older copy of the file."
            )
        ) from None


def _point(value: object) -> Point:
    if not isinstance(value, list) or len(value) != 2:
        raise wrong(say("must be a point [x, y], not {shown}.", shown=shown(value)))
    x, y = _each(_number, value)
    return (x, y)


def _points(value: object) -> Points:
    if not isinstance(value, list):
        raise wrong(
            say("must be a list of points [[x, y], ...], not {shown}.", shown=shown(value))
        )
    try:
        if set(map(type, chain.from_iterable(value))) <= {int, float}:
            quick = tuple([(float(x), float(y)) for x, y in value])
            if isfinite(sum(chain.from_iterable(quick))):
                return quick
    except (TypeError, ValueError, OverflowError):
        pass  # something is wrong: look again, slowly, for what
    return tuple(_each(_point, value))


def _as_is(value: Any) -> Any:  # noqa: ANN401  JSON
    return value


text = Form[str](_text, _as_is)
flag = Form[bool](_flag, _as_is)
whole = Form[int](_whole, _as_is)
number = Form[float](_number, float)
base64 = Form[bytes](_bytes, lambda value: b64encode(value).decode("ascii"))
point = Form[Point](_point, lambda held: [float(held[0]), float(held[1])])
points = Form[Points](_points, lambda held: [[float(x), float(y)] for x, y in held])


def counted(form: Form[Points], fewest: int, most: int | None = None) -> Form[Points]:
    """Return a form of that many points: `fewest` or more, and no more than `most`."""

    def read(value: object) -> Points:
        held = form.read(value)
        if len(held) < fewest or (most is not None and len(held) > most):
            if most == fewest:
                raise wrong(
                    say("must hold {count} points, not {held}.", count=fewest, held=len(held))
                )
            raise wrong(
                say("must hold {count} points or more, not {held}.", count=fewest, held=len(held))
            )
        return held

    return Form(read, form.write)


def maybe(form: Form[T]) -> Form[T | None]:
    """Return a form of a value that may be null."""
    return Form(
        lambda value: None if value is None else form.read(value),
        lambda value: None if value is None else form.write(value),
    )


def word(kind: type[S]) -> Form[S]:
    """Return a form of one of the words of an enumeration."""

    def read(value: object) -> S:
        if not isinstance(value, str) or value not in set(kind):
            hint = (
                meant(value, kind)
                if isinstance(value, str)
                else say("; use {words}.", words=", ".join(kind))
            )
            raise wrong(say("cannot be {shown}{hint}", shown=shown(value), hint=hint))
        return kind(value)

    return Form(read, str)


def several(form: Form[T]) -> Form[tuple[T, ...]]:
    """Return a form of a list, each of whose items has a form."""

    def read(value: object) -> tuple[T, ...]:
        if not isinstance(value, list):
            raise wrong(say("must be a list, not {shown}.", shown=shown(value)))
        return tuple(_each(form.read, value))

    return Form(read, lambda values: [form.write(value) for value in values])


def any_order(form: Form[T]) -> Form[frozenset[T]]:
    """Return a form of a set; it is written in order, so that one value gives one text."""
    listed = several(form)
    return Form(
        lambda value: frozenset(listed.read(value)), lambda held: sorted(map(form.write, held))
    )


def by_name(form: Form[T]) -> Form[Mapping[str, T]]:
    """Return a form of an object whose keys are names and whose values have one form."""

    def read(value: object) -> Mapping[str, T]:
        table = table_of(value)
        read_values = _each(form.read, table.values(), list(table))
        return MappingProxyType(dict(zip(table, read_values, strict=True)))

    return Form(read, lambda held: {name: form.write(value) for name, value in held.items()})


def record(kind: type[R], /, **forms: Form[Any]) -> Form[R]:
    """Return a form of an object that holds the fields of a dataclass.

    Args:
        kind: The dataclass; a field with a default may be left out of the file.
        forms: The form of each of its fields, by name.
    """
    needed = [
        each.name
        for each in fields(kind)
        if each.init and each.default is MISSING and each.default_factory is MISSING
    ]

    def read(value: object) -> R:
        return kind(**read_table(table_of(value), forms, needed))

    def write(held: R) -> dict[str, Any]:
        return {name: form.write(getattr(held, name)) for name, form in forms.items()}

    return Form(read, write)


def brief(kind: type[R], /, **forms: Form[Any]) -> Form[R]:
    """Return a form (see `record`) that leaves out of the file what is as it usually is."""
    whole = record(kind, **forms)
    usual = {
        each.name: forms[each.name].write(each.default)
        for each in fields(kind)
        if each.default is not MISSING
    }

    def write(held: R) -> dict[str, Any]:
        return {
            name: value
            for name, value in whole.write(held).items()
            if name not in usual or value != usual[name]
        }

    return Form(whole.read, write)


def table_of(value: object) -> dict[str, Any]:
    """Return the value, which must be an object.

    Raises:
        Mistakes: it is something else.
    """
    if not isinstance(value, dict):
        raise wrong(say("must be an object {{...}}, not {shown}.", shown=shown(value)))
    return value


def read_table(
    table: Mapping[str, Any], forms: Mapping[str, Form[Any]], needed: Sequence[str]
) -> dict[str, Any]:
    """Read the values of an object that has some keys, each of its own form.

    Raises:
        Mistakes: a key is unknown or missing, or a value is wrong.
    """
    must_know(table, forms, needed)
    held, found = {}, list[tuple[Place, str]]()
    for name, value in table.items():
        try:
            held[name] = forms[name].read(value)
        except Mistakes as mistakes:
            found += mistakes.within(name)
    if found:
        raise Mistakes(*found)
    return held


def must_know(table: Mapping[str, Any], known: Mapping[str, Any], needed: Sequence[str]) -> None:
    """Refuse keys that nobody knows and keys that are missing.

    Raises:
        Mistakes: there are some.
    """
    lacking = [name for name in needed if name not in table]
    if not lacking and table.keys() <= known.keys():
        return
    found: list[tuple[Place, str]] = [
        ((name,), say("is not known here{hint}", hint=meant(name, known)))
        for name in table
        if name not in known
    ]
    if lacking:
        found.append(
            ((), say("lacks {keys}: add it.", keys=" and ".join(repr(name) for name in lacking)))
        )
    raise Mistakes(*found)


def shown(value: object) -> str:
    """Return a value as it stands in the file, cut short."""
    if isinstance(value, dict):
        return say("an object")
    if isinstance(value, list):
        return say("a list of {count}", count=len(value))
    if value is None or isinstance(value, bool):
        return {None: "null", True: "true", False: "false"}[value]
    words = repr(value)
    return words if len(words) <= 40 else f"{words[:37]}..."


def _each(read: Callable[[Any], T], values: Any, steps: Sequence[Any] | None = None) -> list[T]:  # noqa: ANN401
    """Read values of one form; what is wrong with any of them is told together."""
    try:
        return [read(value) for value in values]
    except Mistakes:
        found: list[tuple[Place, str]] = []
        for step, value in zip(steps or range(len(values)), values, strict=True):
            try:
                read(value)
            except Mistakes as mistakes:
                found += mistakes.within(step)
        raise Mistakes(*found) from None
