"""May this reel leave the bench? What the release asks for, what has been measured, what is still to do."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

from spoolwright import quantities
from spoolwright.judgement.taken import Taken
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reel_sheet import ReelSheet

Stand = Literal["met", "not met", "to measure", "by hand"]

START_UP, UNEVEN, CLUTCH = 1.15, 0.10, 0.34
"""The most at the release: start-up ratio and unevenness at half drag, turn until the clutch bites. Judgement
priors."""


@dataclass(frozen=True)
class GateRow:
    """One thing that the release asks for. `kind` is the reading that answers it, empty for a try by hand."""

    key: str
    words: str
    stand: Stand
    found: str = ""
    kind: str = ""


@dataclass(frozen=True)
class _Measured:
    key: str
    kind: str
    words: str
    most: float | None = None
    only: Callable[[Taken], bool] = lambda _: True


def _warm(one: Taken) -> bool:
    return one.conditions.get("anti_reverse_cold") is not True


def _cold(one: Taken) -> bool:
    return one.conditions.get("anti_reverse_cold") is True


def release_gate(
    sheet: ReelSheet | None,
    after: Sequence[Taken],
    *,
    kind: str = "",
    fished_cold: bool = False,
    system: str = "metric",
) -> tuple[GateRow, ...]:
    """What the release asks for, in the order of the bench, with what has been measured after the work.

    Parameters
    ----------
    sheet : ReelSheet or None
        The model **[SI]**: what it does not have is not asked for.
    after : sequence of Taken
        Readings after the last work **[SI]**, oldest first; the latest of a kind counts.
    kind : str
        Kind of reel **[-]** where no sheet says it.
    fished_cold : bool
        Whether the anti-reverse has to hold in the cold too **[-]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    tuple of GateRow
        Measured rows first, then what is tried by hand.

    Notes
    -----
    A limit is met where the value read is not above it; the promise, not the gate, is decided with a guard
    band. A row without a limit is met once it has been measured.

    Source
    ------
    The trade's final bench test: judgement priors and common practice, no source.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> rows = release_gate(reel_sheet.load("tarvak-58r"), [])
    >>> rows[0].words, rows[0].stand
    ('Start over run at half drag: 1.15 or less', 'to measure')
    """
    kind = sheet.reel.kind if sheet else kind
    asked = [row for row in _measured_rows(fished_cold) if _has(sheet, kind, row.key)]
    measured = [_row(asks, after, system) for asks in asked]
    by_hand = [GateRow(key, words, "by hand") for key, words in BY_HAND.items() if _has(sheet, kind, key)]
    return (*measured, *by_hand)


def _measured_rows(fished_cold: bool) -> list[_Measured]:
    cold = [_Measured("anti_reverse_cold", "anti_reverse_slips",
                      "Anti-reverse out of the freezer: no slip in 20 jabs", 0, _cold)]  # fmt: skip
    return [
        _Measured(
            "start_up", "start_up_ratio", f"Start over run at half drag: {START_UP:g} or less", START_UP
        ),
        _Measured("judder", "judder", f"Unevenness at half drag: {100 * UNEVEN:g} % or less", UNEVEN),
        _Measured("pull_full", "pull_full", "The pull with the drag hard on, again"),
        _Measured("anti_reverse", "anti_reverse_slips", "Anti-reverse: no slip in 20 jabs", 0, _warm),
        *(cold if fished_cold else []),
        _Measured("back_play", "back_play", "Handle back-play, again"),
        _Measured("handle_torque", "handle_torque", "Handle torque, again"),
        _Measured("feel", "feel", "Feel of the handle, again"),
        _Measured("spin", "spin_time", "Free spin, started the same way, again"),
        _Measured("end_float", "end_float", "Spool end-float, again"),
        _Measured("clutch", "clutch_engagement", "Clutch bites within a third of a turn, 20 of 20", CLUTCH),
        _Measured("level_wind_turns", "level_wind_turns", "Spool turns for one run of the line guide, again"),
        _Measured("click_pull", "click_pull", "Pull over the click, again"),
    ]


BY_HAND = {
    "level_wind": "Level wind: ten full runs under half a kilogram of pull, clean at both ends",
    "click": "Click: on and off, both ways round",
    "held": "Full drag held for ten seconds, the handle held: at the greatest pull this reel is for, or at a "
    "third of the line's strength if that is less",
    "run_in": "Run in for five minutes at a turn or two of the handle a second, then every screw tried again",
    "left_over": "No part left over",
    "tray": "The empty tray photographed",
}
"""What has no number: tried by hand, and ticked by whoever tried it."""

CAUTION = (
    "Line under load whips back: eyes covered, nobody in line with the pull, the reel held in a jig. "
    "A handle that slips strikes the hand. Keep sleeves, hair and gloves away from anything that turns."
)

_MULTIPLIERS = ("round multiplier", "low-profile multiplier", "lever drag")


def _has(sheet: ReelSheet | None, kind: str, key: str) -> bool:
    """Whether such a reel has what the row is about; without a sheet its kind decides."""
    if key in ("spin", "end_float"):
        return kind in _MULTIPLIERS or not kind
    if key == "clutch":
        # A lever drag is freed by its lever, not by a clutch that bites.
        return kind in ("", *_MULTIPLIERS[:2])
    if key == "handle_torque":
        return kind != "fly"
    if key in ("level_wind", "level_wind_turns"):
        return sheet.level_wind is not None if sheet else kind in ("", *_MULTIPLIERS[:2])
    if key in ("start_up", "judder", "pull_full", "held"):
        return sheet is None or sheet.drag is not None
    if key in ("anti_reverse", "anti_reverse_cold", "back_play"):
        return kind != "fly" and (sheet is None or sheet.anti_reverse is not None)
    if key in ("click", "click_pull"):
        return kind != "low-profile multiplier"
    return True


def _row(asks: _Measured, after: Sequence[Taken], system: str) -> GateRow:
    fitting = [one for one in after if one.kind == asks.kind and asks.only(one)]
    if not fitting:
        return GateRow(asks.key, asks.words, "to measure", kind=asks.kind)
    value = fitting[-1].measured
    met = asks.most is None or value.value <= asks.most * (1 + 1e-9)
    unit = "%" if asks.kind == "judder" else None
    shown = quantities.show(value.value, value.dimension, system, value.expanded or None, unit)
    title = reading_kinds.kind(asks.kind).title
    return GateRow(asks.key, asks.words, "met" if met else "not met", f"{title}: {shown}", asks.kind)
