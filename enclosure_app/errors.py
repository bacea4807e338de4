"""Errors whose text is one finished sentence for the person at the program."""


class EnclosureError(Exception):
    """The input cannot be used; the text says what is wrong, where, and how to mend it."""


class ListedError(EnclosureError):
    """Several things are wrong with one input; `sentences` holds one for each."""

    def __init__(self, sentences: tuple[str, ...]) -> None:
        super().__init__("\n".join(sentences))
        self.sentences = sentences
