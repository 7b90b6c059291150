"""Standard miniature ball bearings by their three boundary dimensions (bearing_sizes.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from spoolwright.quantities import read, show
from spoolwright.sheets.sourced import Sourced, table

CLOSE = 0.05e-3
"""How near a caliper reading must come to a standard size [m]; neighbours differ by 0.2 mm and more."""


@dataclass(frozen=True)
class StandardBearing:
    """One standard size. Ratings are the least and most of two catalogues; `balls` None is not known."""

    bore: float
    outer: float
    width: float
    shielded: bool
    dynamic_rating: Sourced
    static_rating: Sourced
    balls: int | None
    ball_diameter: float | None
    pitch_diameter: float | None
    balls_source: str
    balls_how: str

    @property
    def name(self) -> str:
        """ "3 x 10 x 4 mm", as a person writes it."""
        return " x ".join(f"{size * 1000:g}" for size in (self.bore, self.outer, self.width)) + " mm"


@cache
def sizes() -> tuple[StandardBearing, ...]:
    """Every standard bearing, by bore and outer; a shielded width of its own is an entry of its own."""
    data = table("bearing_sizes.toml")
    found = []
    for row in data["sizes"]["rows"]:
        open_width, shielded_width = row[2], row[3]
        if open_width:
            found.append(_bearing(row, open_width, False, data["source"]))
        if shielded_width and shielded_width != open_width:
            found.append(_bearing(row, shielded_width, True, data["source"]))
    return tuple(found)


def bearing_size(bore: float, outer: float, width: float) -> StandardBearing:
    """The standard bearing of these sizes [m]; KeyError names the nearest ones where there is none."""
    asked = (bore, outer, width)
    for bearing in sizes():
        if all(abs(a - b) <= CLOSE for a, b in zip(asked, _three(bearing), strict=True)):
            return bearing
    near = sorted(sizes(), key=lambda b: sum(abs(a - c) for a, c in zip(asked, _three(b), strict=True)))
    text = " x ".join(show(size, "length") for size in asked)
    raise KeyError(f"{text} is no standard bearing; nearest: {', '.join(b.name for b in near[:3])}")


def _three(bearing: StandardBearing) -> tuple[float, float, float]:
    return bearing.bore, bearing.outer, bearing.width


def _bearing(
    row: list[str], width: str, shielded: bool, source: dict[str, dict[str, str]]
) -> StandardBearing:
    bore, outer, _, _, c_low, c_high, c0_low, c0_high, balls, ball, pitch, how = row
    ratings, told = source["ratings"], source[how]
    return StandardBearing(
        bore=read(bore, "length"),
        outer=read(outer, "length"),
        width=read(width, "length"),
        shielded=shielded,
        dynamic_rating=_rating(c_low, c_high, ratings),
        static_rating=_rating(c0_low, c0_high, ratings),
        balls=int(balls) or None,
        ball_diameter=read(ball, "length") if ball else None,
        pitch_diameter=read(pitch, "length") if pitch else None,
        balls_source=told["text"],
        balls_how=told["how"],
    )


def _rating(low: str, high: str, source: dict[str, str]) -> Sourced:
    return Sourced(read(low, "force"), read(high, "force"), source["text"], source["how"])
