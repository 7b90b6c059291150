"""What the shop book keeps coefficients of, and what the sheets say of each before anything is proved."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from math import log, sqrt
from typing import Literal

from spoolwright.judgement.monte_carlo import Triangular
from spoolwright.judgement.reel_state import PRIOR, ReelState
from spoolwright.judgement.works import Work
from spoolwright.sheets import lubricants

Family = Literal["friction", "bearing", "start-up", "minutes"]

FAMILIES: Mapping[str, str] = {
    "friction": "Friction of the washers",
    "bearing": "Drag of the spool's bearings",
    "start-up": "Start-up ratio",
    "minutes": "Minutes of the works",
    "faults": "How often a fault is found",
}
"""The five chapters of the book."""

NEW, IN_ORDER, AS_FOUND = "new discs", "in order", "as found"
"""The condition of a stack: discs fitted new, cleaned and dressed, or as a reel came in."""

SHARED_RANGE = 0.5
"""Of a start-up range's variance, the part that is the shop's not knowing; the rest is reel to reel.
Judgement prior."""

MINUTES_SPREAD, MINUTES_SCATTER = 0.35, 0.20
"""How far the listed minutes of a work may be out in one shop, and how far two such jobs differ, on the log
scale: judgement priors."""


@dataclass(frozen=True)
class Kind:
    """One coefficient: what the sheets say of it, on the log scale about `middle`.

    `spread` is how far the shop's own mean may lie from `middle` (standard deviation of the logarithm),
    `within` how far single reels lie from that mean where the drawn quantity itself holds it, `day` how far
    a reading of it differs from day to day. `draws` names what predictions draw; `unit` stands behind a
    value.
    """

    key: str
    family: Family
    title: str
    middle: float
    spread: float
    low: float
    high: float
    mark: str = PRIOR
    within: float = 0.0
    day: float = 0.0
    unit: str = ""
    draws: str = ""


def slug(*words: str) -> str:
    """A coefficient's name as it stands in an address.

    Parameters
    ----------
    words : str
        Words **[-]**.

    Returns
    -------
    str
        Letters, digits and hyphens **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> slug("friction", "woven carbon, greased", "new discs")
    'friction-woven-carbon-greased-new-discs'
    """
    return re.sub(r"[^a-z0-9]+", "-", " ".join(words).lower()).strip("-")


def log_deviation(low: float, high: float) -> float:
    """Standard deviation of the logarithm of a value between two ends, likelier in the middle.

    Parameters
    ----------
    low, high : float
        Ends of the range **[any, the same]**, more than 0.

    Returns
    -------
    float
        Deviation **[-]**.

    Notes
    -----
    (ln high - ln low) / (2 sqrt 6), the triangular one.

    Source
    ------
    JCGM 100:2008, 4.3.9 (a triangle of half-width a has a standard deviation of a / sqrt 6).

    Examples
    --------
    >>> round(log_deviation(0.12, 0.19), 4)
    0.0938
    """
    return log(high / low) / (2 * sqrt(6)) if high > low > 0 else 0.0


def friction_kinds(state: ReelState) -> dict[str, Kind]:
    """The friction coefficient of each face that slips in a stack, by the name under which it is drawn.

    Parameters
    ----------
    state : ReelState
        The state in which the stack is **[SI]**.

    Returns
    -------
    dict of str to Kind
        Middle and range **[-]** from the material files.

    Notes
    -----
    Friction and clamp force enter a pull as a product. What a proof teaches is the product's factor against
    the sheet, kept as a friction: "as the pull shows it".

    Source
    ------
    materials.toml, each range with its mark.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> [kind.key for kind in friction_kinds(as_built(reel_sheet.load("tarvak-52"))).values()]
    ['friction-felt-greased-in-order']
    """
    condition = condition_of(state)
    found = {}
    for pair in state.pairs:
        name, held = f"{pair.face_material}, {pair.lubrication}", pair.friction
        found[name] = Kind(
            slug("friction", name, condition),
            "friction",
            f"Friction of {name}, {condition}, as the pull shows it",
            held.middle,
            log_deviation(held.low, held.high),
            held.low,
            held.high,
            held.how,
            day=0.03,
            draws=name,
        )
    return found


def condition_of(state: ReelState) -> str:
    """In which condition the stack of a reel is.

    Parameters
    ----------
    state : ReelState
        A state **[SI]**.

    Returns
    -------
    str
        "new discs", "in order" or "as found" **[-]**.

    Source
    ------
    Our own bookkeeping: a stack that nothing was done to may have any of a wide range of conditions.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_found
    >>> from spoolwright.sheets import reel_sheet
    >>> condition_of(as_found(reel_sheet.load("tarvak-52")))
    'as found'
    """
    if state.new_discs:
        return NEW
    held = state.ranges["drag_condition"]
    return AS_FOUND if held.high / held.low > WIDE else IN_ORDER


WIDE = 1.3
"""Highest over lowest drag condition, beyond which nobody has put the stack in order."""


def start_kind(state: ReelState) -> Kind | None:
    """The start-up ratio of a stack with these faces in this condition.

    Parameters
    ----------
    state : ReelState
        The state in which the stack is **[SI]**.

    Returns
    -------
    Kind or None
        Middle and range **[-]**; None where nothing slips.

    Source
    ------
    materials.toml and works.toml, each range with its mark.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> start_kind(as_built(reel_sheet.load("tarvak-52"))).title
    'Start-up ratio of felt, greased, in order'
    """
    held = state.ranges["start_up_ratio"]
    if not state.pairs or not held.high > held.low > 0:
        return None
    faces = " and ".join(sorted({f"{pair.face_material}, {pair.lubrication}" for pair in state.pairs}))
    condition = condition_of(state)
    whole = log_deviation(held.low, held.high)
    return Kind(
        slug("start-up", faces, condition),
        "start-up",
        f"Start-up ratio of {faces}, {condition}",
        held.middle,
        whole * sqrt(SHARED_RANGE),
        held.low,
        held.high,
        held.mark,
        within=whole * sqrt(1 - SHARED_RANGE),
        day=0.03,
        draws="start_up_ratio",
    )


def bearing_kind(bearing: str, lubricant: str, factors: Mapping[str, Triangular]) -> Kind:
    """The drag factor of spool bearings of a kind with an oil or a grease.

    Parameters
    ----------
    bearing : str
        Kind of bearing on the sheet **[-]**.
    lubricant : str
        Name of a house oil or grease **[-]**.
    factors : mapping of str to Triangular
        `oil_factor` and `grease_factor` as predictions draw them **[-]**.

    Returns
    -------
    Kind
        Palmgren's f0 **[-]**.

    Source
    ------
    SPIN_DRAWS of free_spin: judgement priors.

    Examples
    --------
    >>> oil = {"oil_factor": Triangular(0.5, 1.5), "grease_factor": Triangular(1.0, 4.0)}
    >>> bearing_kind("stainless", "O1", oil).middle
    1.0
    """
    product = lubricants.lubricant(lubricant)
    draws = "grease_factor" if isinstance(product, lubricants.Grease) else "oil_factor"
    held = factors[draws]
    return Kind(
        slug("bearing", bearing, lubricant),
        "bearing",
        f"Drag factor of {bearing} spool bearings with {lubricant}, {_lower(product.title)}",
        (held.low + held.high) / 2,
        log_deviation(held.low, held.high),
        held.low,
        held.high,
        day=0.08,
        draws=draws,
    )


def _lower(title: str) -> str:
    return title if title[1:2].isupper() else title[:1].lower() + title[1:]


def minutes_kind(work: Work, reel: str, minutes: float) -> Kind:
    """Minutes that a work takes this shop on a kind of reel.

    Parameters
    ----------
    work : Work
        The work **[-]**.
    reel : str
        Kind of reel **[-]**.
    minutes : float
        What the list says **[min]**, more than 0.

    Returns
    -------
    Kind
        Middle and range **[min]**.

    Source
    ------
    works.toml: judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.works import all_works
    >>> minutes_kind(all_works()["new-pawl"], "round multiplier", 8.0).key
    'minutes-new-pawl-round-multiplier'
    """
    return Kind(
        slug("minutes", work.id, reel),
        "minutes",
        f"Minutes for “{_lower(work.title)}” on a {reel}",
        minutes,
        MINUTES_SPREAD,
        minutes * 0.56,
        minutes * 1.78,
        unit="min",
    )
