"""How each material looks in every drawing of the house: one hatch and one muted colour, defined here once.

The hatches follow drawing-office custom (steel as pairs of lines, brass as a line and a broken line); ink is
the colour of the text around the drawing, so the same drawing serves paper, day and night.
"""

from __future__ import annotations

from dataclasses import dataclass

TINT = 0.34
FINE = 0.62
"""A part thinner than its hatch is drawn with the hatch scaled down by this much."""


@dataclass(frozen=True)
class Hatch:
    """One material family: its key, its words, its colour, and the marks of one tile of its hatch.

    `lines` are (x1, y1, x2, y2, dash); `dots` are (x, y, radius); `angle` turns the tile.
    """

    key: str
    words: str
    colour: str
    tile: tuple[float, float]
    angle: float = 45.0
    lines: tuple[tuple[float, float, float, float, str], ...] = ()
    dots: tuple[tuple[float, float, float], ...] = ()
    weight: float = 0.55
    tint: float = TINT


HATCHES = {
    hatch.key: hatch
    for hatch in (
        Hatch("brass", "brass, bronze", "#b98d2f", (9, 8), lines=((2, 0, 2, 8, ""), (6.5, 0, 6.5, 8, "4 4"))),
        Hatch("steel", "steel", "#6f8296", (8, 8), lines=((2, 0, 2, 8, ""), (4, 0, 4, 8, ""))),
        Hatch("aluminium", "aluminium, zinc, titanium", "#a3adb0", (5, 8), lines=((2, 0, 2, 8, ""),)),
        Hatch(
            "carbon",
            "woven carbon",
            "#47423d",
            (3.6, 3.6),
            lines=((1.8, 0, 1.8, 3.6, ""), (0, 1.8, 3.6, 1.8, "")),
            weight=0.8,
            tint=0.5,
        ),
        Hatch(
            "fibre",
            "felt, fibre, leather, cork",
            "#96683c",
            (7, 7),
            angle=0,
            lines=(
                (1, 1, 3, 2.2, ""),
                (5, 2.5, 6.2, 0.8, ""),
                (1.5, 6, 2.6, 4.4, ""),
                (4.2, 4.8, 6.2, 5.6, ""),
            ),
            weight=0.6,
            tint=0.42,
        ),
        Hatch(
            "plastic",
            "plastic, rubber",
            "#5f7a63",
            (6.5, 6.5),
            lines=((3, 0, 3, 6.5, ""), (0, 3, 6.5, 3, "")),
            weight=0.4,
        ),
        Hatch(
            "line",
            "line on the spool",
            "#4a7d86",
            (5, 4.4),
            angle=0,
            dots=((1.25, 1.1, 0.62), (3.75, 3.3, 0.62)),
            tint=0.26,
        ),
    )
}

_FAMILY = {
    "brass": ("brass", "bronze", "copper"),
    "steel": ("steel", "iron", "metal"),
    "aluminium": ("aluminium", "zinc", "titanium", "magnesium"),
    "carbon": ("woven carbon",),
    "fibre": ("felt", "fibre", "leather", "cork", "paper"),
    "plastic": ("pom", "ptfe", "nylon", "plastic", "rubber", "nitrile", "composite", "wood"),
}


def family(material: str | None) -> str:
    """The hatch of a material by its name on a reel sheet; what is not known is drawn as aluminium."""
    name = (material or "").casefold()
    for key, words in _FAMILY.items():
        if any(word in name for word in words):
            return key
    return "aluminium"


def pattern_id(prefix: str, key: str, *, crossed: bool = False, fine: bool = False) -> str:
    """The id under which a drawing finds a hatch; `crossed` leans the other way, for a neighbour."""
    return f"{prefix}-{key}{'-x' if crossed else ''}{'-f' if fine else ''}"


def pattern(prefix: str, key: str, *, crossed: bool = False, fine: bool = False) -> str:
    """The hatch as an SVG pattern: its colour as a thin wash, its marks in the ink of the drawing."""
    hatch = HATCHES[key]
    width, height = hatch.tile
    turn = f"rotate({-hatch.angle if crossed else hatch.angle:g})" + (f" scale({FINE})" if fine else "")
    marks = "".join(
        f'<line x1="{a:g}" y1="{b:g}" x2="{c:g}" y2="{d:g}"{_dashed(dash)}/>'
        for a, b, c, d, dash in hatch.lines
    )
    marks += "".join(f'<circle cx="{x:g}" cy="{y:g}" r="{r:g}"/>' for x, y, r in hatch.dots)
    return (
        f'<pattern id="{pattern_id(prefix, key, crossed=crossed, fine=fine)}" patternUnits="userSpaceOnUse" '
        f'width="{width:g}" height="{height:g}" patternTransform="{turn}">'
        f'<rect class="wash {key}" width="{width:g}" height="{height:g}" fill="{hatch.colour}" '
        f'fill-opacity="{hatch.tint:g}" stroke="none"/>'
        f'<g class="hatch" stroke="currentColor" stroke-width="{hatch.weight:g}" stroke-opacity="0.75" '
        f'fill="none">{marks}</g></pattern>'
    )


def _dashed(dash: str) -> str:
    return f' stroke-dasharray="{dash}"' if dash else ""
