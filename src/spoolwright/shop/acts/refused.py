"""Refusals: what the shop did not do, in words that can be shown as they stand.

The refusals of one act stand in its own file; here are those that several acts share.
"""

from __future__ import annotations

from collections.abc import Sequence


class Refused(Exception):
    """The act was not done and nothing was written. `words` says why and what is accepted."""

    def __init__(self, words: str, field: str = "") -> None:
        super().__init__(words)
        self.words = words
        self.field = field


class HandWasNotOurs(Refused):
    """Nobody with a hand in this shop's diary was holding the pen."""

    def __init__(self) -> None:
        super().__init__("Only the people of this shop write in its diary. Sign in first.")


class OwnerWasNeeded(Refused):
    def __init__(self, what: str) -> None:
        super().__init__(f"Only the owner {what}.")


class FieldWasRefused(Refused):
    """What was typed into one field does not fit it."""

    def __init__(self, field: str, complaints: Sequence[str]) -> None:
        super().__init__(f"{field.replace('_', ' ')}: {' '.join(complaints)}", field)


class WordsWereMissing(Refused):
    def __init__(self, field: str, what: str) -> None:
        super().__init__(f"{what} is missing: write it in your own words.", field)


class SomeoneElseWroteFirst(Refused):
    """Two people changed the same thing; the second one looks again before writing."""

    def __init__(self, what: str) -> None:
        super().__init__(
            f"{what} was changed by somebody else meanwhile. What you typed is kept: "
            "look at it again and repeat."
        )


class ReelHadGoneHome(Refused):
    def __init__(self, tag: int) -> None:
        super().__init__(
            f"Reel {tag} has gone home. Its diary takes only words and strikes now; "
            "if it came back, open a new visit that is a return of this one."
        )


class NothingWasAgreed(Refused):
    def __init__(self, what: str) -> None:
        super().__init__(
            f"{what}: the customer has not said yes to anything. Ask first, and write the answer; "
            "silence is not a yes."
        )
