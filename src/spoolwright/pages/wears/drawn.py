"""What the page shows for the answers of its form; each part is worked out when the template asks for it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from spoolwright import quantities
from spoolwright.judgement.bearing_lives import BearingLives, bearing_lives
from spoolwright.judgement.cold_morning import ColdMorning
from spoolwright.judgement.line_lay import LineLay, line_lay
from spoolwright.judgement.top_shot import TopShot, top_shot
from spoolwright.judgement.wear_life import YEAR, PartWear, WearLife, in_words
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.wears import kept
from spoolwright.pages.wears.asked import WearsForm
from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Chart, Curve, Rule, Story

TALL = 1.6
"""Height of the chart over the part's limit: beyond that it is rejected whatever the depth."""


@dataclass(frozen=True)
class Row:
    """One part in words: of what, its limit, how long it lasts in each state, what that rests on."""

    key: str
    name: str
    made_of: str
    limit: str
    slides: str
    lasts: tuple[tuple[str, str], ...]
    rests_on: tuple[str, ...]
    is_drawn: bool


class Drawn:
    """One subject with the answers of its form."""

    def __init__(self, subject: Subject, form: WearsForm) -> None:
        self.subject, self.form, self.system = subject, form, subject.system

    @cached_property
    def lives(self) -> list[tuple[State, WearLife]]:
        use = self.form.use
        return [(state, kept.life(self.subject, state, use)) for state in self.subject.states]

    @property
    def first(self) -> WearLife:
        return self.lives[0][1]

    @property
    def why_not(self) -> str:
        return self.first.why_not

    @property
    def words(self) -> str:
        return self.first.words

    @property
    def notes(self) -> tuple[str, ...]:
        return self.first.notes

    @cached_property
    def key(self) -> str:
        """The part that is drawn: as chosen, else the one that goes first."""
        return str(self.form.value("part")) if "part" in self.form.fields else self.first.parts[0].key

    # --- depth against use --------------------------------------------------------------------------------

    @cached_property
    def depth(self) -> Chart | None:
        shown = [(state, life, part) for state, life in self.lives if (part := _part(life, self.key))]
        if not shown:
            return None
        limit = shown[0][2].limit
        curves = merged([_depth_curve(state, life, part) for state, life, part in shown])
        alike = together([(state.words, in_words(part.lasts)) for state, _, part in shown])
        says = "; ".join(f"{words}: {lasts}" if len(alike) > 1 else lasts for words, lasts in alike)
        name = shown[0][2].part
        story = Story(
            f"Depth worn off against years of such use, {name}. {says}.",
            f"{_capital(name)}. {_capital(says)}. The band holds nine in ten: above all it says how "
            "little is known of wear.",
            (Rule("y", limit, "rejected"),),
        )
        depth = Along("length", "worn off", (0.0, TALL * limit))
        return charts.states(Along("score", "years of such use"), depth, curves, story, system=self.system)

    @cached_property
    def rows(self) -> list[Row]:
        return [self._row(part) for part in self.first.parts]

    def _row(self, part: PartWear) -> Row:
        in_each = [(state.words, _part(life, part.key)) for state, life in self.lives]
        lasts = together([(words, in_words(one.lasts)) for words, one in in_each if one is not None])
        slid = quantities.show(part.slide_per_week, "line_length", self.system)
        return Row(
            part.key, part.part, part.made_of, rough(part.limit, self.system),
            f"slides {slid} in such a week", lasts, (f"limit: {part.limit_source}", *part.rests_on),
            part.key == self.key,
        )  # fmt: skip

    # --- a cold morning ----------------------------------------------------------------------------------

    @cached_property
    def mornings(self) -> list[tuple[State, ColdMorning]]:
        at = float(self.form.value("morning"))
        return [(state, kept.morning(self.subject, state, at)) for state in self.subject.states]

    @property
    def cold(self) -> ColdMorning:
        return self.mornings[0][1]

    @cached_property
    def spin(self) -> Chart | None:
        if self.cold.why_not:
            return None
        curves = merged(
            [_spin_curve(state, kept.curve(self.subject, state)) for state in self.subject.states]
        )
        alike = together([(state.words, cold.words) for state, cold in self.mornings])
        said = " ".join(f"{_capital(words)}: {told}" if len(alike) > 1 else told for words, told in alike)
        story = Story(
            f"Free-spin time against temperature, line off, brakes off. {said}",
            said,
            (Rule("x", self.cold.morning, "that morning"),),
        )
        along, time = Along("temperature", "temperature"), Along("time", "free-spin time")
        return charts.states(along, time, curves, story, system=self.system)

    # --- line and bearings -------------------------------------------------------------------------------

    @cached_property
    def lay(self) -> LineLay:
        s = self.subject
        return line_lay(
            s.sheet, s.readings, s.states[0].works, diameter=self.form.diameter, system=self.system
        )

    @cached_property
    def bearings(self) -> BearingLives:
        s = self.subject
        return bearing_lives(s.sheet, s.readings, s.states[0].works, use=self.form.use)

    @property
    def fish_pull(self) -> str:
        """The pull under which the bearings are looked at."""
        return quantities.show(self.bearings.pull, "force", self.system)

    @cached_property
    def shot(self) -> TopShot:
        length = float(self.form.value("top"))
        return top_shot(self.subject.sheet, top=self.form.line_words, length=length, system=self.system)


def rough(limit: float, system: str) -> str:
    """A reject limit with no more digits than it has."""
    return quantities.show_stated(float(f"{limit:.2g}"), "length", system)


def _part(life: WearLife, key: str) -> PartWear | None:
    """The part of this key; of discs the ones there are, since works may change what they are made of."""
    same = [part for part in life.parts if part.key == key]
    if not same and key.startswith("disc-"):
        same = [part for part in life.parts if part.key.startswith("disc-")]
    return same[0] if same else None


def together(told: Sequence[tuple[str, str]]) -> tuple[tuple[str, str], ...]:
    """States of which the same is told, named in one breath, in their order."""
    names: dict[str, list[str]] = {}
    for state, words in told:
        names.setdefault(words, []).append(state)
    return tuple((", ".join(states), words) for words, states in names.items())


def merged(curves: Sequence[Curve]) -> list[Curve]:
    """Curves that lie on one another as one, under all their names."""
    found: dict[tuple[float, ...], Curve] = {}
    for curve in curves:
        path = tuple(round(value, 12) for value in (*curve.middle, *curve.high))
        same = found.get(path)
        found[path] = curve if same is None else replace(same, words=f"{same.words}, {curve.words}")
    return list(found.values())


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _years(weeks: Sequence[float]) -> list[float]:
    return [week / YEAR for week in weeks]


def _depth_curve(state: State, life: WearLife, part: PartWear) -> Curve:
    return Curve(state.words, _years(life.weeks), part.depth, part.depth_low, part.depth_high)


def _spin_curve(state: State, cold: ColdMorning) -> Curve:
    return Curve(state.words, cold.temperatures, cold.spin, cold.spin_low, cold.spin_high)
