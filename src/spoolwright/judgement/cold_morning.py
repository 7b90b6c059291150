"""What does a colder morning do to the free spool?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright import quantities
from spoolwright.judgement import free_spin
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.monte_carlo import Rectangular, Sample, draw
from spoolwright.judgement.narrowing import Known, know, then
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.reel_state import ReelState, after
from spoolwright.judgement.taken import Condition, Readings
from spoolwright.judgement.works import chosen
from spoolwright.mechanics import lubricant
from spoolwright.sheets import lubricants
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES, SEED = 800, 1
"""Draws that are spun at each temperature: of more that are known, the first so many."""
ROOM = 293.15
"""The bench's usual temperature [K]."""
COLDEST, WARMEST = 253.15, 308.15
"""Where oils of the house still flow and reels are still fished [K]."""
CAST_SPEED = 12_000.0
"""A spool's speed early in a cast [rpm], for the oil film: common practice, no source."""
FILM = (0.2, 0.7)
"""Share of the drag of end discs and level wind at room temperature that oil makes: judgement prior."""
ENDS_OIL = "O2"
TEMPERATURES = tuple(float(t) for t in np.linspace(258.15, 298.15, 9))


@dataclass(frozen=True)
class ColdMorning:
    """Spin time [s] against temperature [K] with its 90 % band, and one morning beside the bench."""

    temperatures: tuple[float, ...]
    spin_low: tuple[float, ...]
    spin: tuple[float, ...]
    spin_high: tuple[float, ...]
    viscosity: tuple[float, ...]
    morning: float
    at_morning: Predicted | None
    at_bench: Predicted | None
    share_left: Predicted | None
    kappa: tuple[float, float]
    index: float
    words: str
    notes: tuple[str, ...]
    why_not: str


def cold_morning(
    sheet: ReelSheet,
    readings: Readings,
    works: Sequence[str] = (),
    *,
    morning: float = 273.15,
    temperatures: Sequence[float] = TEMPERATURES,
    system: str = "metric",
    known: Known | None = None,
) -> ColdMorning:
    """Spin the free spool at several temperatures.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings by kind **[SI]**; none at all: a sound reel of this model is meant.
    works : sequence of str
        Ids of works **[-]**.
    morning : float
        The morning that is asked about **[K]**, 253.15 to 308.15.
    temperatures : sequence of float
        Axis of the curve **[K]**, each from 253.15 to 308.15.
    system : str
        "metric" or "imperial" **[-]**, for the words.
    known : Known or None
        What `know` made of the same sheet and readings **[SI]**.

    Returns
    -------
    ColdMorning
        Spin times **[s]**; share_left is spin time over that at 20 C **[-]**; kappa at the morning and at
        20 C **[-]**; `why_not` in words for a reel without a free spool.

    Raises
    ------
    ValueError
        A temperature outside its range; a work that is not known or not done on this kind of reel.

    Notes
    -----
    Bearings by Palmgren with the oil's viscosity at each temperature; of the drag of end discs and level
    wind a share of 20 to 70 % grows with the viscosity of their oil. One draw of everything else serves all
    temperatures, so that the curve is of one reel. Below its pour point an oil does worse than this.

    Source
    ------
    ASTM D341 and Palmgren (mechanics); shares of drag judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = cold_morning(reel_sheet.load("tarvak-54c"), {})
    >>> found.at_morning.middle < found.at_bench.middle
    True
    """
    _check((morning, *temperatures))
    if not free_spin.spool_bearings(sheet) or sheet.reel.kind not in _FREE:
        return _no_free_spool(sheet, morning)
    known = known or know(sheet, readings, samples=SAMPLES, seed=SEED)
    done = chosen(tuple(works), sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    draws = {name: values[:SAMPLES] for name, values in then(known, state).items()}
    kept = len(draws["temperature"])
    share = draw({"film": Rectangular(*FILM)}, samples=kept, seed=known.seed + 7)["film"]
    spun = {
        t: _spin(sheet, state, draws, share, t, known.start_speed) for t in {*temperatures, morning, ROOM}
    }
    band = [np.quantile(spun[t], [0.05, 0.5, 0.95]) for t in temperatures]
    low, middle, high = (tuple(float(row[i]) for row in band) for i in range(3))
    oil = [_viscosity(state, t) for t in temperatures]
    left = _predicted("share of the spin time that is left", spun[morning] / spun[ROOM], "ratio", morning)
    cold = _predicted("free-spin time", spun[morning], "time", morning)
    bench = _predicted("free-spin time", spun[ROOM], "time", ROOM)
    film = _kappa(sheet, state, morning), _kappa(sheet, state, ROOM)
    words = _words(cold, bench, left, morning, system)
    return ColdMorning(
        tuple(temperatures), low, middle, high, tuple(oil), morning, cold, bench, left, film, _index(state),
        words, _notes(sheet, state, film), "",
    )  # fmt: skip


_FREE = ("round multiplier", "low-profile multiplier", "lever drag")


def _check(temperatures: Sequence[float]) -> None:
    for one in temperatures:
        if not COLDEST - 1e-9 <= one <= WARMEST + 1e-9:
            raise ValueError(f"temperature: {COLDEST} to {WARMEST} K is accepted; got {one!r}")


def _viscosity(state: ReelState, temperature: float) -> float:
    oil = lubricants.lubricant(state.bearing_lubricant)
    return float(lubricant.viscosity_at(temperature, oil.viscosity_40.middle, oil.viscosity_100.middle))


def _index(state: ReelState) -> float:
    oil = lubricants.lubricant(state.bearing_lubricant)
    return float(lubricant.viscosity_index(oil.viscosity_40.middle, oil.viscosity_100.middle))


def _spin(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], share: Sample, temperature: float,
    start: float | None,
) -> Sample:  # fmt: skip
    """Spin times at one temperature, all other draws as they are."""
    oil = lubricants.lubricant(ENDS_OIL)
    printed = oil.viscosity_40.middle, oil.viscosity_100.middle
    thicker = lubricant.viscosity_at(temperature, *printed) / lubricant.viscosity_at(ROOM, *printed)
    grown = 1 - share + share * thicker
    at = {
        **draws,
        "temperature": np.full_like(draws["temperature"], temperature),
        "end_drag": draws["end_drag"] * grown,
        "train_drag": draws["train_drag"] * grown,
    }
    return free_spin.spin_time(sheet, state, at, initial_speed=start)


def _kappa(sheet: ReelSheet, state: ReelState, temperature: float) -> float:
    oil = lubricants.lubricant(state.bearing_lubricant)
    size = free_spin.spool_bearings(sheet)[0].size
    printed = oil.viscosity_40.middle, oil.viscosity_100.middle
    return float(lubricant.kappa(temperature, *printed, CAST_SPEED, (size.bore + size.outer) / 2))


def _predicted(quantity: str, sample: Sample, dimension: str, temperature: float) -> Predicted:
    low, middle, high = np.quantile(sample, [0.05, 0.5, 0.95])
    spread = float(np.std(sample, ddof=1))
    conditions: dict[str, Condition] = {"temperature": temperature, "line": "off", "brakes": "off"}
    return Predicted(quantity, float(middle), float(low), float(high), spread, dimension, conditions)


def _words(cold: Predicted, bench: Predicted, left: Predicted, morning: float, system: str) -> str:
    at, usual = (quantities.show_stated(t, "temperature", system) for t in (morning, ROOM))
    times = [quantities.show(one.middle, "time", system) for one in (cold, bench)]
    span = f"{left.low:.0%} to {left.high:.0%}"
    return f"At {at} the spool spins about {times[0]}, at {usual} {times[1]}: {span} of it is left."


def _notes(sheet: ReelSheet, state: ReelState, film: tuple[float, float]) -> tuple[str, ...]:
    product = lubricants.lubricant(state.bearing_lubricant)
    notes = [
        _film_words(film),
        f"{product.title.capitalize()}: viscosity index {_index(state):.0f}, {_MEANS}.",
    ]
    if isinstance(product, lubricants.Grease):
        notes.append(_grease_words(sheet, product))
    if sheet.anti_reverse is not None and sheet.anti_reverse.roller_clutch:
        notes.append(
            "The roller anti-reverse is what fails first in the cold: grease in it makes it slip. Try it "
            "after 40 minutes in a freezer bag."
        )
    return tuple(notes)


_MEANS = "the higher, the less cold thickens it"


def _film_words(film: tuple[float, float]) -> str:
    cold, bench = film
    state = "a full oil film" if bench >= 1 else "metal touching metal at times"
    return (
        f"Early in a cast the bearings run with {state} (kappa {bench:.1f} at room temperature, {cold:.1f} "
        "that morning): colder oil carries more and costs more."
    )


def _grease_words(sheet: ReelSheet, product: lubricants.Grease) -> str:
    """What a bearing packed with new grease holds before it turns."""
    consistency = lubricants.consistency(product.nlgi)
    size = free_spin.spool_bearings(sheet)[0].size
    radius = (size.bore + size.outer) / 4
    ends = (consistency.stiffest, consistency.softest)
    low, high = sorted(
        float(lubricant.grease_hold(lubricant.grease_yield_stress(p * 1e-4), radius, size.width))
        for p in ends
    )
    span = quantities.show_interval(low, high, "torque")
    return (
        f"A spool bearing packed with new grease of NLGI class {product.nlgi} holds {span} before it turns "
        "at all, and more in the cold (from the grease's yield, order of magnitude): oil, not grease, for "
        "casting."
    )


def _no_free_spool(sheet: ReelSheet, morning: float) -> ColdMorning:
    kind = {"fixed spool": "On a fixed-spool reel", "fly": "On a fly reel"}.get(
        sheet.reel.kind, "On this reel"
    )
    why_not = (
        f"{kind} no spool runs free in a cast, so the cold takes nothing from its spin; its drag and its "
    )
    return ColdMorning(
        (), (), (), (), (), morning, None, None, None, (0.0, 0.0), 0.0, "", (),
        why_not + "anti-reverse still feel it.",
    )  # fmt: skip
