"""What the page shows for the answers of its form; each part is worked out when the template asks for it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cached_property

from spoolwright.judgement.run_test import NO_DRAG, RunTest
from spoolwright.judgement.run_words import (
    HOT_CAUTION,
    LOADED_CAUTION,
    heat_in_short,
    heat_words,
    judder_in_short,
    judder_words,
)
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.long_run import kept, run_charts
from spoolwright.pages.long_run.asked import LongRunForm
from spoolwright.papers.charts import Chart

_BEFORE_UNIT = re.compile(r"(?<=\d) (?=°|%|kg\b|g\b|lb\b|oz\b|m/s|ft/s|m\b|yd\b|s\b|min\b|mm\b|in\b|J\b)")


def unparted(words: str) -> str:
    """The sentence with no number parted from its unit at the end of a line."""
    return _BEFORE_UNIT.sub("\u00a0", words)


@dataclass(frozen=True)
class Told:
    """One state of the reel in words: the first at length, the others in short beside it."""

    words: str
    heat: tuple[str, ...]
    judder: tuple[str, ...]
    notes: tuple[str, ...]


class Drawn:
    """One subject with the answers of its form."""

    hot_caution, loaded_caution = HOT_CAUTION, LOADED_CAUTION

    def __init__(self, subject: Subject, form: LongRunForm) -> None:
        self.subject, self.form, self.system = subject, form, subject.system

    @cached_property
    def tests(self) -> list[tuple[State, RunTest]]:
        """The run against each state that has a drag to slip."""
        if not self.form.fields:
            return []
        fish = self.form.fish
        found = [(state, kept.test_of(self.subject, state, fish)) for state in self.subject.states]
        return [(state, test) for state, test in found if not test.why_not]

    @property
    def why_not(self) -> str:
        return "" if self.tests else NO_DRAG

    @property
    def named(self) -> list[tuple[str, RunTest]]:
        return [(state.words, test) for state, test in self.tests]

    @cached_property
    def heating(self) -> Chart:
        return run_charts.heating(self.named, self.system)

    @cached_property
    def cooling(self) -> Chart:
        return run_charts.cooling(self.named, self.system)

    @cached_property
    def tightening(self) -> Chart:
        return run_charts.tightening(self.named, self.system)

    @cached_property
    def told(self) -> list[Told]:
        return [self._told(n, words, test) for n, (words, test) in enumerate(self.named)]

    def _told(self, n: int, words: str, test: RunTest) -> Told:
        if n == 0:
            heat, judder = heat_words(test, self.system), judder_words(test, self.system)
        else:
            heat = (heat_in_short(test, self.system),)
            judder = (judder_in_short(test, self.system),)
        return Told(words, tuple(map(unparted, heat)), tuple(map(unparted, judder)), test.notes)

    @property
    def rests_on(self) -> tuple[str, ...]:
        """What the answers lean on, of all states together, each once."""
        return tuple(dict.fromkeys(why for _, test in self.tests for why in test.rests_on))
