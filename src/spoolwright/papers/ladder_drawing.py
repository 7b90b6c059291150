"""The load ladder as a ladder: a rung a part, with the span of pulls at which it gives.

Plain data in, SVG text out. The pull runs to the right; equal steps are equal ratios. What a rung is, is said
by shape, hatch and words, never by a colour of its own: the drag's span carries the hatch of its friction
material, that of line the dots of line, a part of the reel is plain.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from math import log

from spoolwright.judgement.load_ladder import Ladder
from spoolwright.judgement.rung import Rung
from spoolwright.papers import materials_key
from spoolwright.papers.charts import house_chart as house
from spoolwright.papers.figures import Span, shown
from spoolwright.papers.section.pen import lettering, text_width, wrapped

MOST_TIMES = 8.0
"""A rung that gives beyond this many times the drag is drawn at the end of the ladder with an arrow."""
LEAST_SHARE = 0.5
"""The ladder begins at this share of the lowest middle."""
CHANGED = 0.03
"""A rung that works move by less than this share is not drawn as it was before."""
SPAN, DRAG_SPAN = 12.0, 17.0
STILE = 5.0
RULER = 44.0


@dataclass(frozen=True)
class Board:
    """How the ladder lies on its sheet, in drawing units: its stiles, the size of its lettering."""

    width: float
    left: float
    right: float
    size: float
    beside: bool


BOARDS = {
    "narrow": Board(360.0, 8.0, 352.0, 14.0, beside=False),
    "desk": Board(780.0, 226.0, 612.0, 14.5, beside=True),
}


@dataclass(frozen=True)
class Setting:
    """Where the drag stands now: the pull that it gives there, and the words of the place."""

    pull: Span
    words: str


@dataclass(frozen=True)
class _Row:
    rung: Rung
    level: float
    name: tuple[str, ...]
    value: str
    tag: str


def draw(
    ladder: Ladder,
    *,
    friction: str = "",
    arrangement: str = "narrow",
    setting: Setting | None = None,
    system: str = "metric",
) -> str:
    """The ladder as SVG; `friction` is the material of the drag's discs, `setting` where its star stands."""
    if ladder.drag is None:
        raise ValueError("ladder: one with a drag; one that says why it has no meaning came")
    return _Drawing(ladder, friction, arrangement, setting, system).svg()


class _Drawing:
    def __init__(
        self, ladder: Ladder, friction: str, arrangement: str, setting: Setting | None, system: str
    ) -> None:
        self.ladder, self.setting, self.system = ladder, setting, system
        self.board = BOARDS[arrangement]
        self.prefix = f"ladder-{arrangement}"
        self.hatch = materials_key.family(friction) if friction else "fibre"
        assert ladder.drag is not None
        self.drag = ladder.drag
        self.low = LEAST_SHARE * min(one.limit.middle for one in ladder.rungs)
        self.high = min(
            1.1 * max(one.limit.high for one in ladder.rungs), MOST_TIMES * self.drag.limit.middle
        )
        self.top = 26.0 if setting else 6.0
        self.rows = self._rows()
        self.foot = self.rows[0].level + (34.0 if self.rows[0].tag else 22.0)

    # --- where things lie ----------------------------------------------------------------------

    def x(self, pull: float) -> float:
        """Equal steps to the right are equal ratios of pull; what lies beyond an end is drawn at it."""
        room = self.board.right - self.board.left - 2 * STILE
        share = log(max(pull, 1e-9) / self.low) / log(self.high / self.low)
        return self.board.left + STILE + room * min(max(share, 0.0), 1.0)

    def _rows(self) -> list[_Row]:
        """From the bottom of the ladder upwards; the highest rung has the least level."""
        level, rows = self.top, []
        for one in reversed(self.ladder.rungs):
            value = shown(_span(one), self.system)
            name, tag = self._name(one, value), self._tag(one)
            level += self._above(name)
            rows.append(_Row(one, level, name, value, tag))
            level += 32.0 if tag else 15.0
        return list(reversed(rows))

    def _above(self, name: tuple[str, ...]) -> float:
        if self.board.beside:
            return 20.0 + 7.0 * (len(name) - 1)
        return 30.0 + (self.board.size + 2) * (len(name) - 1)

    def _name(self, one: Rung, value: str) -> tuple[str, ...]:
        board = self.board
        if board.beside:
            return wrapped(_capital(one.name), board.size, board.left - 16, most=2)
        room = board.right - board.left - 2 * STILE - 24 - text_width(value, board.size)
        return wrapped(_capital(one.name), board.size, room, most=3)

    def _tag(self, one: Rung) -> str:
        ladder = self.ladder
        if ladder.weakest is not None and one.part == ladder.weakest.part:
            return (
                "the reel’s weakest" if self.board.beside else f"the reel’s weakest, {_times(one)} the drag"
            )
        if ladder.weakest_of_line is not None and one.part == ladder.weakest_of_line.part:
            return "first of what the line does"
        if one.part == self.drag.part and ladder.weakest is not None and ladder.weakest.over.middle >= 1.0:
            return "gives first, as it should"
        return ""

    # --- what is drawn ----------------------------------------------------------------------

    def svg(self) -> str:
        height = self.foot + RULER
        label = escape(self._label(), quote=True)
        parts = [self._patterns(), self._reach(), self._setting(), self._stiles(), self._ruler()]
        parts += [*(self._row(row) for row in self.rows), self._margin()]
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="load-ladder" role="img" aria-label="{label}" '
            f'viewBox="0 0 {self.board.width:g} {height:.1f}"><g stroke="currentColor" fill="none" '
            f'stroke-linejoin="round">{"".join(parts)}</g></svg>'
        )

    def _label(self) -> str:
        ladder, drag = self.ladder, shown(_span(self.drag), self.system)
        weakest = ladder.weakest
        behind = f" The reel’s weakest part is the {weakest.name}, {_times(weakest)} that." if weakest else ""
        return f"Load ladder of {len(ladder.rungs)} rungs. The drag gives at {drag}.{behind} A list follows."

    def _patterns(self) -> str:
        keys = dict.fromkeys((self.hatch, "line"))
        return f"<defs>{''.join(materials_key.pattern(self.prefix, key) for key in keys)}</defs>"

    def _reach(self) -> str:
        """How far the drag's pull reaches, from its rung up: the rungs above should lie to its right."""
        at = next(row.level for row in self.rows if row.rung.part == self.drag.part)
        a, m, b = (self.x(v) for v in (self.drag.limit.low, self.drag.limit.middle, self.drag.limit.high))
        return (
            f'<rect class="reach" x="{a:.1f}" y="{self.top:.1f}" width="{b - a:.1f}" '
            f'height="{at - self.top:.1f}" fill="currentColor" fill-opacity="0.08" stroke="none"/>'
            f'<path d="M{m:.1f} {self.top:.1f}V{at:.1f}" stroke-width="0.7" stroke-dasharray="5 3"/>'
        )

    def _stiles(self) -> str:
        board = self.board
        size = f'width="{STILE:g}" height="{self.foot - self.top + 8:.1f}" stroke-width="0.9"'
        lefts = (board.left, board.right - STILE)
        return "".join(f'<rect x="{x:.1f}" y="{self.top - 4:.1f}" {size}/>' for x in lefts)

    def _ruler(self) -> str:
        scale = house.scale("force", self.system, self.high)
        level, lines = self.foot + 4, []
        for number in _ticks(self.low / scale.factor, self.high / scale.factor):
            x = self.x(number * scale.factor)
            lines.append(f'<path d="M{x:.1f} {level:.1f}v5" stroke-width="0.8"/>')
            lines.append(lettering((x, level + 18), f"{number:g}", 12.5, "middle", kind="tick"))
        words = f"pull at the line, {scale.unit}"
        lines.append(lettering((self.board.right, level + 35), words, 12.5, "end", kind="tick"))
        ends = f"M{self.board.left - 6:.1f} {level:.1f}H{self.board.right + 6:.1f}"
        return f'<path d="{ends}" stroke-width="0.9"/>' + "".join(lines)

    def _row(self, row: _Row) -> str:
        return self._bar(row) + self._was(row) + self._span_of(row) + self._words(row)

    def _bar(self, row: _Row) -> str:
        a, b = self.board.left + STILE, self.board.right - STILE
        lines = "".join(f"M{a:.1f} {row.level + side:.1f}H{b:.1f}" for side in (-2, 2))
        return f'<path d="{lines}" stroke-width="0.45"/>'

    def _was(self, row: _Row) -> str:
        """The same rung before the works, as a broken outline, where they move it."""
        before = (
            next((r for r in self.ladder.before.rungs if r.part == row.rung.part), None)
            if self.ladder.before
            else None
        )
        if before is None or abs(before.limit.middle / row.rung.limit.middle - 1) < CHANGED:
            return ""
        a, b = self.x(before.limit.low), self.x(before.limit.high)
        tall = DRAG_SPAN + 6
        return (
            f'<rect class="was" x="{a:.1f}" y="{row.level - tall / 2:.1f}" width="{max(b - a, 1):.1f}" '
            f'height="{tall:g}" stroke-width="0.8" stroke-dasharray="3 2.5"/>'
        )

    def _span_of(self, row: _Row) -> str:
        one, is_drag = row.rung, row.rung.borne == "drag"
        tall = DRAG_SPAN if is_drag else SPAN
        a, m, b = (self.x(v) for v in (one.limit.low, one.limit.middle, one.limit.high))
        top, weight = row.level - tall / 2, 1.5 if is_drag else 0.9
        box = (
            f'<rect class="span {one.borne}" x="{a:.1f}" y="{top:.1f}" width="{b - a:.1f}" height="{tall:g}" '
            f'{self._fill(one)} stroke-width="{weight}"/>'
        )
        middle = f'<path d="M{m:.1f} {top - 3:.1f}v{tall + 6:g}" stroke-width="{weight + 0.6}"/>'
        drawn = box + middle if one.limit.low < self.high else ""
        return drawn + self._beyond(one, row.level) + self._lasts(one, row.level)

    def _fill(self, one: Rung) -> str:
        if one.borne == "drag":
            return f'fill="url(#{materials_key.pattern_id(self.prefix, self.hatch)})"'
        if one.borne == "line":
            return f'fill="url(#{materials_key.pattern_id(self.prefix, "line")})"'
        return 'fill="currentColor" fill-opacity="0.22"'

    def _beyond(self, one: Rung, level: float) -> str:
        """An arrow where the span goes on past the end of the ladder."""
        arrows = ""
        if one.limit.high > self.high:
            x = self.board.right - STILE - 3
            arrows += f'<path d="M{x - 5:.1f} {level - 4:.1f}l5 4l-5 4" stroke-width="1.1"/>'
        if one.limit.low < self.low:
            x = self.board.left + STILE + 3
            arrows += f'<path d="M{x + 5:.1f} {level - 4:.1f}l-5 4l5 4" stroke-width="1.1"/>'
        return arrows

    def _lasts(self, one: Rung, level: float) -> str:
        """An open mark under the rung at the pull that the part bears for its life."""
        if one.lasts is None or one.lasts.middle < self.low:
            return ""
        x = self.x(one.lasts.middle)
        return f'<path class="lasts" d="M{x:.1f} {level + 3:.1f}l-4.5 8h9z" stroke-width="0.9"/>'

    def _words(self, row: _Row) -> str:
        return self._words_beside(row) if self.board.beside else self._words_above(row)

    def _words_beside(self, row: _Row) -> str:
        board, lines = self.board, []
        first = row.level + 5 - (board.size + 1) * (len(row.name) - 1) / 2
        for k, text in enumerate(row.name):
            lines.append(lettering((board.left - 10, first + k * (board.size + 1)), text, board.size, "end"))
        middle, _, ends = row.value.partition(", ")
        lines.append(lettering((board.right + 10, row.level + 5), middle, board.size, kind="value"))
        lines.append(lettering((board.width, row.level + 5), ends, 12.5, "end", kind="ends"))
        if row.tag:
            below = row.level + 21 + 7 * (len(row.name) - 1)
            lines.append(lettering((board.left - 10, below), row.tag, 12.5, "end", kind="tag"))
        return "".join(lines)

    def _words_above(self, row: _Row) -> str:
        board, lines = self.board, []
        at = board.left + STILE + 5
        first = row.level - 13 - (board.size + 2) * (len(row.name) - 1)
        for k, text in enumerate(row.name):
            lines.append(lettering((at, first + k * (board.size + 2)), text, board.size))
        end = board.right - STILE - 5
        lines.append(lettering((end, row.level - 13), row.value, board.size, "end", kind="value"))
        if row.tag:
            lines.append(lettering((at, row.level + 24), row.tag, board.size - 1, kind="tag"))
        return "".join(lines)

    def _margin(self) -> str:
        """A dimension line from the drag to the reel's weakest part, beneath that rung."""
        weakest = self.ladder.weakest
        row = next((row for row in self.rows if weakest and row.rung.part == weakest.part), None)
        if weakest is None or row is None:
            return ""
        a, b, y = self.x(self.drag.limit.middle), self.x(weakest.limit.middle), row.level + SPAN / 2 + 9
        if abs(b - a) < 4:
            return ""
        heads = "".join(_head(x, y, way) for x, way in ((a, 1 if b > a else -1), (b, -1 if b > a else 1)))
        line = f'<path class="margin-line" d="M{a:.1f} {y:.1f}H{b:.1f}{heads}" stroke-width="1"/>'
        if not self.board.beside:
            return line
        words = f"{_times(weakest)} the drag"
        return line + lettering((max(a, b) + 8, y + 4.5), words, 12.5, kind="tag")

    def _setting(self) -> str:
        if self.setting is None:
            return ""
        x, board = self.x(self.setting.pull.middle), self.board
        to_left = x > (board.left + board.right) / 2
        words = f"{self.setting.words}: {shown(self.setting.pull, self.system).partition(', ')[0]}"
        at = (x - 5, 14.0) if to_left else (x + 5, 14.0)
        return (
            f'<path class="setting" d="M{x:.1f} 4V{self.foot + 4:.1f}" stroke-width="1.1" '
            f'stroke-dasharray="9 2 1.5 2"/>'
            + lettering(at, words, 12.5, "end" if to_left else "start", kind="tag")
        )


def _head(x: float, y: float, way: int) -> str:
    """The head of an arrow that points against `way`."""
    return f"M{x + 5 * way:.1f} {y - 3:.1f}L{x:.1f} {y:.1f}L{x + 5 * way:.1f} {y + 3:.1f}"


def _span(one: Rung) -> Span:
    return Span(one.limit.middle, one.limit.low, one.limit.high, "force")


def _times(one: Rung) -> str:
    return f"{one.over.middle:.2f} times"


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _ticks(low: float, high: float) -> list[float]:
    """1, 2, 5 and their tens between two ends."""
    steps = [lead * 10.0**power for power in range(-4, 6) for lead in (1, 2, 5)]
    return [float(f"{step:.6g}") for step in steps if low <= step <= high]
