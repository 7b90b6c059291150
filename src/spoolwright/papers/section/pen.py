"""Puts shapes on the sheet: millimetres to drawing units, line kinds of the drawing office, SVG text.

No style attribute and no style element: every look is a presentation attribute with a class beside it, so a
strict page can restyle the drawing and a paper can print it as it is.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from html import escape
from typing import TYPE_CHECKING

from spoolwright.papers import materials_key
from spoolwright.papers.ink import ACCENT, DRAWING_FACE
from spoolwright.papers.section.shapes import Box, Outline, Point, Round, Shape
from spoolwright.papers.typesetting import FONTS

if TYPE_CHECKING:
    from PIL.ImageFont import FreeTypeFont

LETTERING = f"{DRAWING_FACE}, sans-serif"
FINE_BELOW = 9.0
"""A cut narrower than this many units takes the finer hatch."""

# Line kinds after ISO 128: visible edges, thin lines, centre lines as chains, custom forms as broken lines.
LINES = {
    "outline": 'stroke-width="1.1"',
    "thin": 'stroke-width="0.6"',
    "hair": 'stroke-width="0.4"',
    "chain": 'stroke-width="0.55" stroke-dasharray="9 2 1.5 2"',
    "phantom": 'stroke-width="0.6" stroke-dasharray="3.5 1.8"',
    "leader": 'stroke-width="0.5"',
    "slip": f'stroke="{ACCENT}" stroke-width="0.9" stroke-dasharray="2.5 2.5"',
    "finding": f'stroke="{ACCENT}" stroke-width="1.6"',
}


@dataclass(frozen=True)
class View:
    """How a section lies on its sheet: units per mm, where its origin is, and -1 for a left-hand reel."""

    scale: float
    left: float
    top: float
    hand: int = 1

    def point(self, at: Point) -> Point:
        return self.left + self.hand * self.scale * at[0], self.top + self.scale * at[1]

    def box(self, box: Box) -> Box:
        (a, top), (b, bottom) = self.point((box[0], box[1])), self.point((box[2], box[3]))
        return min(a, b), top, max(a, b), bottom


@dataclass(frozen=True)
class Pen:
    """Draws shapes of one view as SVG; `prefix` keeps the hatches of two drawings on a page apart."""

    view: View
    prefix: str

    def draw(self, shape: Shape) -> str:
        look = f'class="{shape.line}" {LINES[shape.line]} {self._fill(shape)}'
        if isinstance(shape, Round):
            x, y = self.view.point(shape.centre)
            return f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{shape.radius * self.view.scale:.2f}" {look}/>'
        path = "".join(self._path(points, shape.closed) for points in (shape.points, *shape.holes))
        return f'<path d="{path}" {look}/>'

    def _path(self, points: tuple[Point, ...], closed: bool) -> str:
        where = [self.view.point(p) for p in points]
        return "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in where) + ("Z" if closed else "")

    def _fill(self, shape: Shape) -> str:
        if isinstance(shape, Outline) and shape.cut:
            name = materials_key.pattern_id(
                self.prefix, shape.cut, crossed=shape.crossed, fine=self._is_thin(shape)
            )
            return f'fill="url(#{name})" fill-rule="evenodd"'
        if shape.wash:
            hatch = materials_key.HATCHES[shape.wash]
            return f'fill="{hatch.colour}" fill-opacity="{hatch.tint:g}"'
        return 'fill="none"'

    def _is_thin(self, shape: Outline) -> bool:
        xs, ys = [x for x, _ in shape.points], [y for _, y in shape.points]
        least = min(max(xs) - min(xs), max(ys) - min(ys))
        return least * self.view.scale < FINE_BELOW


@cache
def _font(size: int) -> FreeTypeFont:
    from PIL import ImageFont

    return ImageFont.truetype(str(FONTS / "routed-gothic.ttf"), size)


@cache
def text_width(text: str, size: float) -> float:
    """Width of a line of lettering in drawing units."""
    return float(_font(100).getlength(text)) * size / 100


def lettering(
    at: Point,
    text: str,
    size: float,
    anchor: str = "start",
    *,
    kind: str = "name",
    colour: str = "currentColor",
) -> str:
    """A line of text in the drawing face."""
    return (
        f'<text class="{kind}" x="{at[0]:.1f}" y="{at[1]:.1f}" font-family="{LETTERING}" '
        f'font-size="{size:g}" text-anchor="{anchor}" fill="{colour}" stroke="none">{escape(text)}</text>'
    )


def wrapped(text: str, size: float, width: float, most: int = 4) -> tuple[str, ...]:
    """The text in at most `most` lines no wider than `width`; what is too long ends in an ellipsis."""
    lines: list[str] = []
    for word in (_cut(word, size, width) for word in text.split()):
        if lines and text_width(f"{lines[-1]} {word}", size) <= width:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    kept = lines[:most]
    if len(lines) > most:
        kept[-1] = _cut(f"{kept[-1]}…", size, width)
    return tuple(kept) or ("",)


def _cut(word: str, size: float, width: float) -> str:
    if text_width(word, size) <= width:
        return word
    while len(word) > 1 and text_width(f"{word}…", size) > width:
        word = word[:-1]
    return f"{word}…"
