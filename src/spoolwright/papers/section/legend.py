"""Beside the drawing: the bar of the scale, the key of materials, and the words under it."""

from __future__ import annotations

from spoolwright.papers import materials_key
from spoolwright.papers.section.pen import lettering, text_width
from spoolwright.papers.section.shapes import Point

SWATCH = (22.0, 12.0)
BARS = {"metric": (10.0, "10 mm"), "imperial": (12.7, "1/2 in")}
"""Length of the scale's bar in mm, and its words."""


def scale_bar(at: Point, scale: float, size: float, system: str, printed: str = "") -> str:
    """A bar of a round length at the drawing's own scale, from `at`; `printed` is the scale in print."""
    length, words = BARS[system]
    x, y = at
    end = x + length * scale
    return (
        f'<g class="scale-bar"><title>Scale bar, {words}</title>'
        f'<path d="M{x:.1f} {y - 4:.1f}v8M{end:.1f} {y - 4:.1f}v8M{x:.1f} {y:.1f}H{end:.1f}" fill="none" '
        'stroke-width="1"/>'
        + lettering(
            (end + 6, y + 0.33 * size), f"{words}, all parts to one scale{printed}", size, kind="scale"
        )
        + "</g>"
    )


def key(families: list[str], at: Point, width: float, size: float, prefix: str) -> tuple[str, float]:
    """The key of the materials that the drawing uses, and the height it takes."""
    x, y = at
    pieces, row = [], 0
    for name in families:
        words = materials_key.HATCHES[name].words
        needed = SWATCH[0] + 6 + text_width(words, size) + 16
        if x > at[0] and x + needed - 16 > at[0] + width:
            x, row = at[0], row + 1
        top = y + row * size * 1.6
        pieces.append(
            f'<rect x="{x:.1f}" y="{top:.1f}" width="{SWATCH[0]:g}" height="{SWATCH[1]:g}" '
            'stroke-width="0.6" '
            f'fill="url(#{materials_key.pattern_id(prefix, name)})"/>'
            + lettering((x + SWATCH[0] + 6, top + SWATCH[1] - 2), words, size, kind="material")
        )
        x += needed
    body = "".join(pieces)
    return f'<g class="materials-key"><title>Key of materials</title>{body}</g>', (row + 1) * size * 1.6
