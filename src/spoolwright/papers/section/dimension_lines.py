"""Dimensions in the drawing face: extension lines, a line with arrows, the size on it."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.papers.section.measures import MM, Measures
from spoolwright.papers.section.pen import View, lettering

ARROW, OVER = 6.0, 3.0


@dataclass(frozen=True)
class Dimension:
    """One size: along x or y, from and to in mm, where its line lies in mm, and how many rows farther out."""

    along: str
    start: float
    end: float
    from_level: float
    row: int
    side: int
    words: str


def dimensions(m: Measures, system: str) -> list[Dimension]:
    """The sizes that a bench asks for, those that the sheet gives."""
    sizes = m.sheet.spool

    def mm(value: float, sign: str = "") -> str:
        return sign + quantities.show(value / MM, "length", system)

    below = m.lowest
    found = [
        Dimension("x", -m.half_width, m.half_width, below, 0, 1, mm(sizes.width * MM)),
        Dimension("y", -m.rim, m.rim, m.off_end, 2, -1, mm(sizes.flange_diameter * MM, "Ø ")),
        Dimension("y", -m.full, m.full, m.off_end, 1, -1, mm(2 * m.full, "full Ø ")),
        Dimension("y", -m.arbor, m.arbor, m.off_end, 0, -1, mm(sizes.arbor_diameter * MM, "Ø ")),
    ]
    if m.plates:
        left, right = m.plates
        found.append(Dimension("x", left, right, below, 1, 1, mm(right - left)))
    if len(m.spool_bearings) == 2:
        (_, a), (_, b) = m.spool_bearings
        found.append(Dimension("x", a, b, below, 2, 1, mm(b - a, "bearings ")))
    if m.drive_axis:
        found.append(Dimension("y", 0.0, m.drive_axis, m.right_end, 0, 1, mm(m.drive_axis)))
    if m.sheet.handle and m.drive_axis:
        tip = m.drive_axis - m.sheet.handle.arm_length * MM
        found.append(Dimension("y", tip, m.drive_axis, m.right_end, 1, 1, mm(m.sheet.handle.arm_length * MM)))
    return found


def draw(it: Dimension, view: View, size: float) -> str:
    """The dimension as SVG."""
    return _across(it, view, size) if it.along == "x" else _up(it, view, size)


def _across(it: Dimension, view: View, size: float) -> str:
    (a, level), (b, _) = view.point((it.start, it.from_level)), view.point((it.end, it.from_level))
    a, b = sorted((a, b))
    y = level + it.side * (10 + it.row * size * 1.7)
    ends = f"M{a:.1f} {level:.1f}V{y + OVER:.1f}M{b:.1f} {level:.1f}V{y + OVER:.1f}M{a:.1f} {y:.1f}H{b:.1f}"
    near = f"M{a + ARROW:.1f} {y - 2:.1f}L{a:.1f} {y:.1f}l{ARROW} 2"
    far = f"M{b - ARROW:.1f} {y - 2:.1f}L{b:.1f} {y:.1f}l-{ARROW} 2"
    text = lettering(((a + b) / 2, y - 3), it.words, size, "middle", kind="size")
    return _path(ends + near + far) + text


def _path(way: str) -> str:
    return f'<path class="dimension" d="{way}" fill="none" stroke-width="0.5"/>'


def _up(it: Dimension, view: View, size: float) -> str:
    (level, a), (_, b) = view.point((it.from_level, it.start)), view.point((it.from_level, it.end))
    x = level + view.hand * it.side * (8 + it.row * size * 1.5)
    over = OVER if x > level else -OVER
    ends = f"M{level:.1f} {a:.1f}H{x + over:.1f}M{level:.1f} {b:.1f}H{x + over:.1f}M{x:.1f} {a:.1f}V{b:.1f}"
    near = f"M{x - 2:.1f} {a + ARROW:.1f}L{x:.1f} {a:.1f}l2 {ARROW}"
    far = f"M{x - 2:.1f} {b - ARROW:.1f}L{x:.1f} {b:.1f}l2 -{ARROW}"
    middle = (a + b) / 2
    text = lettering((0, 0), it.words, size, "middle", kind="size")
    turned = f'<g transform="translate({x - 3:.1f} {middle:.1f}) rotate(-90)">{text}</g>'
    return _path(ends + near + far) + turned


def room(found: list[Dimension], size: float) -> tuple[float, float, float]:
    """What the dimensions take at the left, at the right and below, in drawing units."""

    def rows(along: str, side: int) -> int:
        return max((it.row + 1 for it in found if it.along == along and it.side == side), default=0)

    return rows("y", -1) * size * 1.5 + 14, rows("y", 1) * size * 1.5 + 14, rows("x", 1) * size * 1.7 + 12
