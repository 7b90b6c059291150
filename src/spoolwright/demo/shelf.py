"""The invented workshop's own instruments: what lies on the shelf, how it was checked, one study."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from random import Random
from typing import Any

from spoolwright.demo.signals import KILOGRAM
from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.check_instrument import HeldAgainst, check_instrument
from spoolwright.shop.acts.write_gauge_study import Studied, Try, write_gauge_study

CALIPER, CELL, SCALE, LETTERS, WATCH, WEIGHTS, PHONE = "C1", "F1", "S1", "B1", "T1", "W1", "P1"
CLOCK = 0.0001
"""How far off the clock of the phone may be, as a share [-]."""
SHELF: Mapping[str, tuple[str, Known]] = {
    CALIPER: ("caliper", Known("the long caliper", 0.01e-3, limit=0.03e-3, high=0.15)),
    CELL: (
        "force-gauge",
        Known("the load cell at the jig", 0.01 * KILOGRAM, share=0.005, high=25 * KILOGRAM),
    ),
    SCALE: (
        "hanging-scale",
        Known("the hanging scale", 0.01 * KILOGRAM, limit=0.02 * KILOGRAM, share=0.01, high=40 * KILOGRAM),
    ),
    LETTERS: ("letter-scale", Known("the letter scale", 0.1e-3, limit=0.1e-3, high=0.5)),
    WATCH: ("stopwatch", Known("the stopwatch", 0.01, limit=0.1)),
    WEIGHTS: ("weights", Known("brass weights, 100 g to 2 kg", 0.0, share=0.001, low=0.1, high=2.0)),
    PHONE: ("phone", Known("the bench phone", 0.001, share=CLOCK)),
}
"""Under its mark: the kind, and what is known of it. Invented."""

MEASURES: Mapping[str, str] = {PHONE: "time"}
"""What one of them is used for, where that is not the usual one of its kind."""

CHECKS: Mapping[str, HeldAgainst] = {
    CELL: HeldAgainst("W1, 2 kg on its hook", 2 * KILOGRAM, 2.005 * KILOGRAM, 0.001 * KILOGRAM),
    SCALE: HeldAgainst("W1, 2 kg on its hook", 2 * KILOGRAM, 2.01 * KILOGRAM, 0.001 * KILOGRAM),
    CALIPER: HeldAgainst("outer ring of a new 10 mm bearing", 10e-3, 10.01e-3, 0.004e-3),
    PHONE: HeldAgainst("the time signal, ten minutes apart", 600.0, 600.02, 0.02),
    LETTERS: HeldAgainst("W1, 100 g in the middle of the pan", 0.1, 0.1001, 0.0001),
}

WASHERS = {
    "washer 1": 1.52e-3,
    "washer 2": 1.47e-3,
    "washer 3": 1.38e-3,
    "washer 4": 1.29e-3,
    "washer 5": 1.10e-3,
}
"""Five drag washers from new to worn out, as thick as they are [m]."""

EACH_TIME, EACH_HAND = 0.008e-3, 0.010e-3
"""How far one try lies from the next, and one person's squeeze from the other's [m]."""
TRIES = 3


def fill(ingjerd: Any, torbal: Any, chance: Random) -> dict[str, Any]:
    """Put the instruments on the shelf, checked, with the study that both of them made."""
    shelf = {
        mark: add_instrument(
            hand=ingjerd, mark=mark, kind=kind, known=known, dimension=MEASURES.get(mark, "")
        )
        for mark, (kind, known) in SHELF.items()
    }
    for mark, held in CHECKS.items():
        check_instrument(hand=torbal, instrument=shelf[mark], held=held)
    tries = [*_tries((ingjerd.name, torbal.name), chance)]
    studied = Studied("thickness of drag washers", "length", tries, tolerance=0.5e-3)
    write_gauge_study(hand=ingjerd, instrument=shelf[CALIPER], studied=studied)
    return shelf


def _tries(people: tuple[str, ...], chance: Random) -> Iterator[Try]:
    """What the display shows: the washer, this person's squeeze, chance, in steps of a hundredth."""
    step = SHELF[CALIPER][1].resolution
    squeeze = {person: sign * EACH_HAND / 2 for person, sign in zip(people, (1, -1), strict=True)}
    for number in range(1, TRIES + 1):
        for person in people:
            for part, thick in WASHERS.items():
                shown = thick + squeeze[person] + chance.gauss(0.0, EACH_TIME)
                yield Try(part, person, number, round(round(shown / step) * step, 8))
