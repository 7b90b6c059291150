"""One kind of reading over the life of a reel: as it was found at each visit, and what the work made of it.

The visits stand side by side, whatever time lay between them: a reading and the one after the work are days
apart and years from the next. The days are written under them.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.charts.house_chart import Chart, Scale, Spec

HEIGHT = 130
ROOM = 0.55
SLOT, BESIDE, END = 0.16, 0.05, 0.13
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "June", "July", "Aug", "Sept", "Oct", "Nov", "Dec")
FOUND, WORKED = "as found", "after the work"


@dataclass(frozen=True)
class Then:
    """One reading of its day.

    `visit` is the number of the visit. Readings with the same `alike` were taken under conditions that let
    them stand side by side. `words` tell how it was taken, for the table.
    """

    at: datetime
    visit: int
    measured: Measured
    alike: int
    after_work: bool
    words: str = ""

    @property
    def low(self) -> float:
        return self.measured.value - self.measured.expanded

    @property
    def high(self) -> float:
        return self.measured.value + self.measured.expanded


@dataclass(frozen=True)
class Manner:
    """How the readings are said: in whose units, or in a unit that goes before them."""

    system: str = "metric"
    unit: str | None = None

    def shown(self, it: Measured) -> str:
        return raised(quantities.show(it.value, it.dimension, self.system, it.expanded, self.unit))

    def scale(self, points: Sequence[Then]) -> Scale:
        dimension = points[0].measured.dimension
        if self.unit is None:
            return house.scale(dimension, self.system, max(abs(point.high) for point in points))
        unit = quantities.DIMENSIONS[dimension].unit(self.unit)
        return Scale(dimension, unit.name, float(unit.factor), float(unit.offset))


PLAIN = Manner()


def raised(text: str) -> str:
    """A power where a reader looks for it: "N m s²"."""
    return text.replace("^2", "²").replace("^3", "³")


def reading_history(
    what: str, points: Sequence[Then], *, manner: Manner = PLAIN, width: int | None = None
) -> Chart:
    """Each reading with its interval at its visit; a line joins only what can be compared."""
    if not points:
        raise ValueError(f"{what}: a history needs at least one reading")
    ordered = sorted(points, key=lambda point: point.at)
    first, last = ordered[0], ordered[-1]
    description = (
        f"{what} over time: {len(ordered)} readings, from {manner.shown(first.measured)} on {day(first.at)} "
        f"to {manner.shown(last.measured)} on {day(last.at)}."
    )
    layers = _Drawing(ordered, manner).layers()
    spec = house.chart_spec(description, layers, width=width, height=HEIGHT)
    rows = tuple((_told(point), manner.shown(point.measured)) for point in ordered)
    return Chart(spec, says(ordered, manner), ("when and how", what), rows)


def says(points: Sequence[Then], manner: Manner = PLAIN) -> str:
    """The last reading beside the one before it that it can be compared with."""
    last = points[-1]
    now = f"{manner.shown(last.measured)} on {day(last.at)}"
    before = [point for point in points[:-1] if point.alike == last.alike]
    if not before:
        return f"Last read as {now}; nothing from before was read under the same conditions."
    then = before[-1]
    unsure = (last.measured.expanded**2 + then.measured.expanded**2) ** 0.5
    change = last.measured.value - then.measured.value
    way = "no change that the gauges could show" if abs(change) <= unsure else "up" if change > 0 else "down"
    return f"Last read as {now}, {manner.shown(then.measured)} on {day(then.at)}: {way}."


def day(moment: date) -> str:
    """ "3 June 2026"."""
    return f"{moment.day} {MONTHS[moment.month - 1]} {moment.year}"


def _told(point: Then) -> str:
    state = WORKED if point.after_work else FOUND
    return ", ".join(filter(None, (day(point.at), f"number {point.visit}", state, point.words)))


class _Drawing:
    """Where each reading stands, and the layers of the picture."""

    def __init__(self, points: Sequence[Then], manner: Manner) -> None:
        self.points, self.manner = points, manner
        self.scale = manner.scale(points)
        self.visits = list(dict.fromkeys(point.visit for point in points))
        self.x = dict(zip(map(id, points), self._places(), strict=True))
        self.encoding = {"x": self._visit_axis(), "y": self._value_axis()}
        self.middle = self.encoding | {"y": self.encoding["y"] | {"field": "m"}}

    def _places(self) -> list[float]:
        """Found on the left of its visit, after the work on the right; several beside one another."""
        taken: dict[tuple[int, bool], int] = defaultdict(int)
        places = []
        for point in self.points:
            slot = (point.visit, point.after_work)
            side = SLOT if point.after_work else -SLOT
            places.append(round(self.visits.index(point.visit) + side + BESIDE * taken[slot], 3))
            taken[slot] += 1
        return places

    def _visit_axis(self) -> Spec:
        count = len(self.visits)
        ends = [-0.5, count - 0.5 + END * count]
        labels = [[str(visit), self._month(visit)] for visit in self.visits]
        return house.x_axis(
            "",
            ends,
            values=list(range(count)),
            labelExpr=f"{labels}[datum.value]",
            labelFlush=False,
            labelOverlap=True,
            tickSize=0,
        )

    def _month(self, visit: int) -> str:
        first = next(point.at for point in self.points if point.visit == visit)
        return f"{MONTHS[first.month - 1]} {first.year}"

    def _value_axis(self) -> Spec:
        low, high = min(self.scale(p.low) for p in self.points), max(self.scale(p.high) for p in self.points)
        room = (high - low) * ROOM or abs(high) * ROOM or 1.0
        return house.y_axis(raised(self.scale.unit), [low - room, high + room], tickCount=3)

    def _row(self, point: Then) -> Spec:
        low, value, high = (self.scale(v) for v in (point.low, point.measured.value, point.high))
        return {"x": self.x[id(point)], "y": low, "y2": high, "m": value}

    def layers(self) -> list[Spec]:
        return [
            *self._lines(),
            *self._dots(False, house.INK),
            *self._dots(True, house.ACCENT),
            *self._words(),
        ]

    def _lines(self) -> list[Spec]:
        alike: dict[int, list[Spec]] = defaultdict(list)
        for point in self.points:
            alike[point.alike].append(self._row(point))
        mark = {"type": "line", "color": house.INK, "strokeWidth": 0.8, "aria": False}
        return [
            {"data": {"values": rows}, "mark": mark, "encoding": self.middle}
            for rows in alike.values()
            if len(rows) > 1
        ]

    def _dots(self, after: bool, colour: str) -> list[Spec]:
        """Rings for what was found, dots in the accent for what was read after the work."""
        rows = [self._row(point) for point in self.points if point.after_work is after]
        if not rows:
            return []
        bar = {"type": "rule", "color": colour, "strokeWidth": 1.2, "aria": False}
        dot = {"type": "point", "filled": after, "color": colour, "size": 44, "opacity": 1, "aria": False}
        ends = self.encoding | {"y2": {"field": "y2"}}
        return [
            {"data": {"values": rows}, "mark": bar, "encoding": ends},
            {"data": {"values": rows}, "mark": dot, "encoding": self.middle},
        ]

    def _words(self) -> list[Spec]:
        """The last value stands beside its point; the first ring and the first dot say what they are."""
        last = self.points[-1]
        firsts = {state: self._first(state == WORKED) for state in (FOUND, WORKED)}
        value = self.manner.shown(last.measured).partition(" ±")[0]
        at_last = house.at(self.x[id(last)], self.scale(last.measured.value))
        said = [house.words(value, at_last, self.encoding, align="left", baseline="middle", dx=8)]
        for state, point in firsts.items():
            if point is not None:
                said.append(self._name(state, point))
        return said

    def _first(self, after: bool) -> Then | None:
        return next((point for point in self.points if point.after_work is after), None)

    def _name(self, state: str, point: Then) -> Spec:
        """Above the higher of the two, below the lower, so that neither lies on the line between them."""
        other = self._first(state == FOUND)
        above = other is not None and other.measured.value < point.measured.value
        where = house.at(self.x[id(point)], self.scale(point.high if above else point.low))
        side = {"baseline": "bottom", "dy": -4} if above else {"baseline": "top", "dy": 5}
        return house.words(state, where, self.encoding, align="center", **side)
