"""How the engine says no: one clear sentence, and what to write instead."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches


class RefusalError(ValueError):
    """An input that cannot be worked with.

    `message` is one sentence for the author or the reader; `field` names the input at fault,
    where there is one, so that a form can show the sentence beside it.
    """

    def __init__(self, message: str, field: str | None = None) -> None:
        """Keep the sentence and the field it speaks of."""
        super().__init__(message)
        self.message = message
        self.field = field

    def about(self, field: str) -> RefusalError:
        """The same refusal, tied to an input: its name opens the sentence."""
        return RefusalError(f"{quoted(field)}: {self.message}", field)


class RefusalsError(Exception):
    """Several refusals at once, so that an author sees all her slips in one go."""

    def __init__(self, refusals: Iterable[RefusalError]) -> None:
        """Keep the refusals in the order in which they were found."""
        self.refusals = tuple(refusals)
        super().__init__("; ".join(refusal.message for refusal in self.refusals))


LONGEST_QUOTE = 40


def quoted(text: str) -> str:
    """A value as the author wrote it, cut short when it is long, safe to print on one line."""
    shown = "".join(character if character.isprintable() else "?" for character in text)
    return shown if len(shown) <= LONGEST_QUOTE else shown[:LONGEST_QUOTE] + "..."


def near_name(name: str, known: Iterable[str]) -> str:
    """`; did you mean "band"?` when a known name is near, else nothing."""
    names = sorted(name for name in known if name.isprintable())
    near = get_close_matches(name[:LONGEST_QUOTE], names, n=1, cutoff=0.6)
    return f'; did you mean "{near[0]}"?' if near else ""


def nearest_name(name: str, known: Iterable[str]) -> str:
    """`; did you mean "band"?` when a known name is near, else the whole list of names."""
    names = sorted(name for name in known if name.isprintable())
    return near_name(name, names) or (f"; known: {', '.join(names)}" if names else "")
