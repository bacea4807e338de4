"""Errors whose text is one finished sentence for the person at the program."""


class EnclosureError(Exception):
    """The input cannot be used; the text says what is wrong, where, and how to mend it."""

    def __reduce__(self) -> tuple[object, ...]:
        """Let it pass from one process to another as it is, whatever its own kind asks for."""
        return _made_again, (type(self), self.args, vars(self))


class ListedError(EnclosureError):
    """Several things are wrong with one input; `sentences` holds one for each."""

    def __init__(self, sentences: tuple[str, ...]) -> None:
        super().__init__("\n".join(sentences))
        self.sentences = sentences


def _made_again(
    kind: type[EnclosureError], args: tuple[object, ...], more: dict[str, object]
) -> EnclosureError:
    error = kind.__new__(kind, *args)
    error.args = args
    vars(error).update(more)
    return error
