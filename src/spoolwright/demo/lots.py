"""Which oil and grease went where, and from which lot: what a look-back searches for later."""

from __future__ import annotations

from datetime import date

from spoolwright.shop.acts.write_work import Lubricated

BAD_LOT = "G2-07"
"""The tub of grease of the week in which roller clutches were greased (scenario 6); nobody else has it."""

_MULTIPLIER = (
    ("spool bearings", "Tysna 10", "1 needle drop each", "O1"),
    ("gear teeth", "Fjølvatn 2", "0.3 g, brushed on", "G2"),
    ("drag discs", "Fjølvatn drag", "30 mg a disc, wiped", "G3"),
    ("level-wind worm", "Tysna 32", "2 drops", "O2"),
    ("plate screws", "Fjølvatn film", "a trace", "AS"),
)
_FIXED = (
    ("gear teeth", "Fjølvatn 2", "0.3 g, brushed on", "G2"),
    ("main shaft", "Tysna 32", "1 drop", "O2"),
    ("line roller", "Tysna 32", "2 drops", "O2"),
    ("roller clutch", "Tysna clutch", "1 needle drop, wiped", "OC"),
)
_LEVER = (
    ("pinion bearings", "Fjølvatn 2", "0.4 g, packed to a third", "G2"),
    ("drag plate", "Fjølvatn drag", "a film, wiped", "G3"),
    ("lever cam", "Fjølvatn 2", "20 mg", "G2"),
)
_FLY = (("spindle", "Fjølvatn 0", "a film", "G1"), ("check pawl", "Fjølvatn 2", "5 mg", "G2"))
_BY_KIND = {"fixed spool": _FIXED, "lever drag": _LEVER, "fly": _FLY}


def usual(kind: str, day: date) -> list[Lubricated]:
    """What a reel of this kind gets, each from the tub or bottle that was open that month."""
    rows = _BY_KIND.get(kind, _MULTIPLIER)
    return [Lubricated(point, product, amount, lot(short, day)) for point, product, amount, short in rows]


def lot(short: str, day: date) -> str:
    number = 10 + (day.year * 12 + day.month) % 12
    return f"{short}-{number:02d}"
