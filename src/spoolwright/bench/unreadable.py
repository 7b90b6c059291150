"""What the bench says when a signal cannot be trusted: the reason, the place, and what would be accepted."""

from __future__ import annotations

from dataclasses import dataclass


class Unreadable(ValueError):
    """A signal or a typed reading that gives no number worth writing down."""

    def __init__(self, reason: str, where: str = "", accepted: str = "") -> None:
        self.reason = reason
        self.where = where
        self.accepted = accepted
        super().__init__(self.words)

    @property
    def words(self) -> str:
        """One or two sentences for the person at the bench."""
        begin = f"{self.where}: {self.reason}" if self.where else self.reason[:1].upper() + self.reason[1:]
        sentence = _ended(begin)
        return f"{sentence} Accepted: {_ended(self.accepted)}" if self.accepted else sentence


def _ended(sentence: str) -> str:
    return sentence if sentence.endswith("?") else f"{sentence}."


@dataclass(frozen=True)
class Question:
    """One thing that the file does not say: the answer's name in the form, the question, the choices."""

    key: str
    words: str
    accepted: str


class NeedsAnswer(Unreadable):
    """The file can be read once somebody says what it leaves out."""

    def __init__(self, questions: tuple[Question, ...], where: str = "") -> None:
        self.questions = questions
        asked = " ".join(question.words for question in questions)
        accepted = "; ".join(f"{question.key}: {question.accepted}" for question in questions)
        super().__init__(f"the file does not say enough. {asked}".rstrip("."), where, accepted)

    @property
    def missing(self) -> tuple[str, ...]:
        """Names of the answers that are needed: keys of `TraceForm`."""
        return tuple(question.key for question in self.questions)
