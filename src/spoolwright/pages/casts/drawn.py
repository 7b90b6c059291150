"""What the page shows for the answers of its form; each part is worked out when the template asks for it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Any

from spoolwright.judgement import cast_words
from spoolwright.judgement.cast_case import ENDS, LOSSES, CastCase
from spoolwright.judgement.cast_compare import Compared
from spoolwright.pages.casts import kept
from spoolwright.pages.casts.asked import CastsForm
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Chart, Curve, Flight, Rule, Story
from spoolwright.papers.figures import Span
from spoolwright.quantities import show

GUESS = ("judgement prior", "guess")
POINTS = 121


@dataclass(frozen=True)
class Reason:
    """One thing that the cast rests on; a guess is said to be one."""

    words: str
    is_guess: bool


class Drawn:
    """One subject with the answers of its form, once the cast can be worked out."""

    def __init__(self, subject: Subject, form: CastsForm) -> None:
        self.subject, self.form, self.system = subject, form, subject.system

    @cached_property
    def today(self) -> CastCase:
        return kept.case_of(self.subject, self.form.throw)

    @property
    def why_not(self) -> str:
        return self.today.why_not

    @cached_property
    def options(self) -> list[tuple[State, Compared]]:
        """Every other state beside the first, the same arm throwing."""
        found = []
        for state in self.subject.states[1:]:
            beside = kept.compared_of(self.subject, self.form.throw, state.works)
            if beside is not None:
                found.append((state, beside))
        return found

    @cached_property
    def cases(self) -> list[tuple[State, CastCase]]:
        first = (self.subject.states[0], self.today)
        return [first, *((state, beside.untouched) for state, beside in self.options)]

    @cached_property
    def chosen(self) -> tuple[State, CastCase]:
        """The state whose spool and line are drawn."""
        wanted = self.subject.state(self.form.state_key)
        return next((pair for pair in self.cases if pair[0] == wanted), self.cases[0])

    @cached_property
    def told(self) -> tuple[str, ...]:
        return cast_words.told(self.today, self.system)

    @cached_property
    def matters(self) -> tuple[str, ...]:
        found = kept.matters_of(self.subject, self.form.throw)
        return cast_words.matters_told(self.today, found, self.system)

    @cached_property
    def beside(self) -> list[tuple[str, ...]]:
        """Each option's sentences."""
        return [
            cast_words.compared_told(found, state.words[:1].upper() + state.words[1:], self.system)
            for state, found in self.options
        ]

    @cached_property
    def reasons(self) -> list[Reason]:
        return [Reason(why, any(mark in why for mark in GUESS)) for why in self.today.rests_on]

    @cached_property
    def losses(self) -> list[tuple[str, str]]:
        """Where the energy of the middle cast goes, the greatest first; a following wind gives instead."""
        found = sorted(self.today.losses.items(), key=lambda pair: -pair[1])
        return [
            (LOSSES[name], show(energy, "energy", self.system)) for name, energy in found if energy > 0.005
        ]

    @cached_property
    def path(self) -> Chart:
        several = [_flight(state.words, case) for state, case in self.cases]
        says = "Each line is the middle cast; the bars under the water show where nine in ten come down."
        return charts.flights(several, says, system=self.system)

    @cached_property
    def speeds(self) -> Chart | None:
        """The spool's rim against the line that leaves it, for one state."""
        state, case = self.chosen
        if case.is_fixed_spool:
            return None
        flown = case.middle
        line = _thinned(flown.time, flown.speed)
        rim = _thinned(flown.time, flown.line_speed)
        fastest = show(float(flown.spool_speed.max()), "rotation", self.system)
        says = (
            "Where the broken line lies above the other, the spool feeds line faster than the cast takes it, "
            f"and loops of slack grow. The spool turns {fastest} at its fastest."
        )
        described = f"Speed of the payload and of the spool's rim over the time of the cast, {state.words}."
        curves = [Curve("payload", *line), Curve("rim of the spool", *rim)]
        axes = Along("time", "time since the release"), Along("speed", "speed")
        return charts.states(*axes, curves, Story(described, says), system=self.system)

    @cached_property
    def slack(self) -> Chart | None:
        """How far the spool runs ahead, every state, the first with its band."""
        if self.today.is_fixed_spool:
            return None
        first, *rest = self.cases
        curves = [_slack_band(first[0].words, first[1])]
        curves += [Curve(state.words, *_thinned(case.middle.time, case.middle.slack)) for state, case in rest]
        lip = self.today.lip_slack
        says = (
            "How much line the spool has fed beyond what the cast took. Turns as high as the lip are a guess "
            "at where an over-run begins; the grey band holds 9 casts in 10."
        )
        highest = max(max((*curve.middle, *curve.high)) for curve in curves)
        rules = (Rule("y", lip, "turns as high as the lip"),) if highest > 0.3 * lip else ()
        described = "Slack over the time of the cast: " + "; ".join(
            _peak(*pair, self.system) for pair in self.cases
        )
        axes = Along("time", "time since the release"), Along("line_length", "spool ahead of the line")
        return charts.states(*axes, curves, Story(described, says, rules), system=self.system)


def _peak(state: State, case: CastCase, system: str) -> str:
    return f"{state.words}, at the most {show(float(case.middle.summary.peak_slack), 'line_length', system)}"


def _flight(words: str, case: CastCase) -> Flight:
    far = case.values["distance"]
    x, y = _thinned(case.middle.x, case.middle.y)
    return Flight(words, x, y, Span(far.middle, far.low, far.high, far.dimension))


def _thinned(x: Any, y: Any) -> tuple[list[float], list[float]]:
    """No more points than a line on a page needs, the ends among them."""
    import numpy as np

    kept_points = np.unique(np.linspace(0, len(x) - 1, POINTS).round().astype(int))
    return x[kept_points].tolist(), y[kept_points].tolist()


def _slack_band(words: str, case: CastCase) -> Curve:
    """The middle cast's slack, and that of the casts at both ends of nine in ten, at the same times."""
    import numpy as np

    flights = [case.drawn("peak_slack", ENDS[0]), case.middle, case.drawn("peak_slack", ENDS[1])]
    end = max(float(flown.time[-1]) for flown in flights)
    time = np.linspace(0.0, end, POINTS)
    low, middle, high = (np.interp(time, flown.time, flown.slack, right=0.0) for flown in flights)
    low, high = np.minimum(low, middle), np.maximum(high, middle)
    return Curve(words, time.tolist(), middle.tolist(), low.tolist(), high.tolist())
