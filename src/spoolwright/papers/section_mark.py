"""The mark of a reel in a list: its section, small, without a word on it."""

from __future__ import annotations

from dataclasses import replace
from html import escape

from spoolwright.papers.ink import ACCENT
from spoolwright.papers.section import arrangement as layout
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.pen import Pen, View
from spoolwright.papers.section.shapes import Outline, Part, Shape, box_of
from spoolwright.sheets.reel_sheet import ReelSheet

WIDTH, EDGE = 150.0, 1.5
TALLEST = 110.0


def mark(sheet: ReelSheet, chosen: str = "") -> str:
    """The section at a common width as SVG text, materials as plain washes: hatching would run together.

    `chosen` is the beginning of the key of parts that stand out; empty: none does.
    """
    m = measure(sheet)
    parts = [part for part in layout.reel_parts(m, m.full) if _is_told(part)]
    boxes = [box_of(part.shapes) for part in parts]
    left, right = min(b[0] for b in boxes), max(b[2] for b in boxes)
    top, bottom = min(b[1] for b in boxes), max(b[3] for b in boxes)
    scale = min((WIDTH - 2 * EDGE) / (right - left), (TALLEST - 2 * EDGE) / (bottom - top))
    hand = -1 if sheet.reel.winding_hand == "left" else 1
    spare = (WIDTH - 2 * EDGE - (right - left) * scale) / 2
    origin = EDGE + spare - left * scale if hand > 0 else WIDTH - EDGE - spare + left * scale
    pen = Pen(View(scale, origin, EDGE - top * scale, hand), f"{sheet.reel.slug}-mark")
    body = "".join(pen.draw(_plain(shape)) for part in parts for shape in part.shapes)
    if chosen:
        stands_out = (part for part in parts if part.key.startswith(chosen))
        drawn = "".join(pen.draw(_plain(shape)) for part in stands_out for shape in part.shapes)
        body += f'<g class="chosen" stroke="{ACCENT}" stroke-width="3">{drawn}</g>' if drawn else ""
    label = escape(f"{sheet.reel.maker} {sheet.reel.model} in section, small", quote=True)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="section-mark" role="img" aria-label="{label}" '
        f'viewBox="0 0 {WIDTH:g} {(bottom - top) * scale + 2 * EDGE:.1f}">'
        f'<g stroke="currentColor" stroke-linejoin="round" fill="none">{body}</g></svg>'
    )


def _is_told(part: Part) -> bool:
    """What is drawn by custom alone tells nothing of this reel."""
    return part.key not in {"foot", "cast-cap", "star"}


def _plain(shape: Shape) -> Shape:
    if not isinstance(shape, Outline):
        return replace(shape, line="hair")
    line = shape.line if shape.line in ("phantom", "chain") else "hair"
    return replace(shape, cut="", wash=shape.cut or shape.wash, line=line)
