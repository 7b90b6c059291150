"""What will this reel do, as it is or after some works? Readings to expect, with 90 % intervals."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from math import pi

import numpy as np

from spoolwright.judgement import drag_train, free_spin, grounds, meaning
from spoolwright.judgement.book_lessons import for_state
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known, know, then
from spoolwright.judgement.reel_state import ReelState, after
from spoolwright.judgement.taken import Condition, Readings, Taken
from spoolwright.judgement.works import chosen
from spoolwright.mechanics import spool
from spoolwright.sheets.drag_setting import STAR, DragSetting, setting_of
from spoolwright.sheets.reel_sheet import ReelSheet

COVERAGE = 0.90
EXAMPLE_LINE = 0.40e-3
LEVER_STEPS = 10
"""Rows of a lever's table besides free."""
NEARLY_EMPTY = 0.10
"""Share of a full spool's line that is left when it is called nearly empty."""

PREDICTS = {
    "pull_full": "pull_full_spool",
    "drag_torque": "drag_torque",
    "start_up_ratio": "start_up_ratio",
    "judder": "judder",
    "spin_time": "spin_time",
    "stop_time": "spin_time",
    "end_float": "end_float",
}
"""Which predicted value stands beside which kind of reading, so that a proof compares like with like."""


@dataclass(frozen=True)
class Predicted:
    """One reading to expect: the middle, and the ends of its 90 % interval, in the SI unit of `dimension`."""

    quantity: str
    middle: float
    low: float
    high: float
    deviation: float
    dimension: str
    conditions: Mapping[str, Condition] = field(default_factory=dict)
    rests_on: tuple[str, ...] = ()


@dataclass(frozen=True)
class StarTurn:
    """Running pull at a full spool with the star so many turns from free, or the lever so far on its way."""

    turns: float
    pull: Predicted


@dataclass(frozen=True)
class Prediction:
    """Everything that is expected of a reel; `notes` are doubts, `warnings` are about the stack itself.

    `setting` is what sets the drag; `why_not` says of a value that has no meaning here why it has none.
    """

    values: Mapping[str, Predicted]
    star_turns: tuple[StarTurn, ...]
    limited_by: str
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
    works: tuple[str, ...]
    samples: int
    seed: int
    setting: DragSetting = STAR
    why_not: Mapping[str, str] = field(default_factory=dict)


def predict(
    sheet: ReelSheet,
    readings: Readings,
    works: Sequence[str] = (),
    *,
    samples: int = 4000,
    seed: int = 1,
    system: str = "metric",
    known: Known | None = None,
) -> Prediction:
    """Predict the readings of a reel, as it is or as some works would leave it.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings by kind **[SI]**; none at all: a sound reel of this model is meant.
    works : sequence of str
        Ids of works **[-]**; none: the reel as it is.
    samples : int
        Draws that are kept **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.
    known : Known or None
        What `know` made of the same sheet and readings **[SI]**, so that several sets of works share it; what
        the shop book has taught comes with it.

    Returns
    -------
    Prediction
        Values by id in SI: pull_full_spool, pull_half_spool, pull_near_empty, drag_torque,
        pull_per_star_turn, pull_at_strike, start_up_ratio, judder, spin_time, end_float, line_capacity,
        line_per_turn, line_per_turn_low, as far as the reel has them.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel; fewer than 100 samples.

    Notes
    -----
    Greatest usable pull: springs not yet flat, star no tighter than a hand turns it. drag_torque is pull
    times radius. Intervals leave 5 % out on either side.

    Source
    ------
    JCGM 101:2008; formulas of mechanics; ranges with their marks in `rests_on`.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> pull = predict(reel_sheet.load("tarvak-54c"), {}).values["pull_full_spool"]
    >>> pull.low < pull.middle < pull.high
    True
    """
    known = known or know(sheet, readings, samples=samples, seed=seed)
    done = chosen(tuple(works), sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    draws = then(known, state, sheet)
    taught = for_state(known.learned, sheet, state)
    told = grounds.Grounds(sheet, state, known.used, tuple(works), system, taught)
    values, limited_by = _drag_values(sheet, state, draws, told)
    values |= _plain_values(sheet, state, draws, told, known.start_speed)
    values |= _line_values(sheet, known.taken, draws, told)
    return Prediction(
        values=values,
        star_turns=_star_turns(sheet, state, draws, told),
        limited_by=limited_by,
        warnings=(*state.warnings, *told.pressure_warnings()),
        notes=known.notes,
        works=tuple(works),
        samples=known.samples,
        seed=known.seed,
        setting=setting_of(sheet),
        why_not=meaning.without_meaning(sheet),
    )


def _predicted(
    quantity: str, sample: Sample, dimension: str, conditions: Mapping[str, Condition], why: Sequence[str]
) -> Predicted:
    low, middle, high = np.quantile(sample, [(1 - COVERAGE) / 2, 0.5, (1 + COVERAGE) / 2])
    spread = float(np.std(sample, ddof=1))
    return Predicted(
        quantity, float(middle), float(low), float(high), spread, dimension, conditions, tuple(why)
    )


def _drag_values(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], told: grounds.Grounds
) -> tuple[dict[str, Predicted], str]:
    if sheet.drag is None or not state.pairs:
        return {}, meaning.NO_DRAG
    clamp, shares = drag_train.greatest_clamp(sheet.drag, draws, draws["spring_force"])
    torque = drag_train.spool_torque(sheet, state, draws, clamp)
    turns = sheet.drag.turns_to_full
    why = told.of_drag()
    values = {
        "drag_torque": _predicted("torque on the spool at the greatest usable drag", torque, "torque",
                                  {"star_turns": turns}, why),
        "pull_per_star_turn": _predicted(_added(setting_of(sheet)),
                                         torque / sheet.spool.full_radius / turns, "force",
                                         {"radius": sheet.spool.full_radius}, why),
    }  # fmt: skip
    values |= _at_strike(sheet, state, draws, why)
    for name, words, share in _FILLS:
        radius = drag_train.radius_at_fill(sheet, share)
        conditions = {"radius": radius, "star_turns": turns, "line_left": share}
        values[name] = _predicted(
            f"greatest usable pull at {words}", torque / radius, "force", conditions, why
        )
    return values, _limit_words(shares, setting_of(sheet))


def _added(setting: DragSetting) -> str:
    if setting.is_lever:
        return "pull that the whole way of the lever adds"
    return f"pull that one turn of the {setting.control} adds, on average"


def _at_strike(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], why: Sequence[str]
) -> dict[str, Predicted]:
    """A lever's pull at its strike stop, with the preset that gives the greatest pull at full."""
    lever = sheet.drag.lever if sheet.drag else None
    if sheet.drag is None or lever is None or lever.strike_angle is None:
        return {}
    turns = sheet.drag.turns_to_full * lever.strike_angle / lever.cam_angle
    clamp = drag_train.clamp_at(sheet.drag, turns, draws, draws["spring_force"])
    radius = sheet.spool.full_radius
    pull = drag_train.spool_torque(sheet, state, draws, clamp) / radius
    words = "pull at the strike stop, the preset as far on as leaves the spool free"
    conditions: dict[str, Condition] = {"radius": radius, "star_turns": turns, "line_left": 1.0}
    return {"pull_at_strike": _predicted(words, pull, "force", conditions, why)}


_FILLS = (
    ("pull_full_spool", "a full spool", 1.0),
    ("pull_half_spool", "a spool with half of its line left", 0.5),
    ("pull_near_empty", "a spool with a tenth of its line left", NEARLY_EMPTY),
)


def _limit_words(shares: Mapping[str, float], setting: DragSetting) -> str:
    first = max(shares, key=lambda name: shares[name])
    words = first.replace("turns of the star", setting.by.removeprefix("the ")).replace(
        "star", setting.control
    )
    return f"{words[0].upper()}{words[1:]} first, in {shares[first]:.0%} of the cases drawn."


def _plain_values(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    told: grounds.Grounds,
    start_speed: float | None,
) -> dict[str, Predicted]:
    values: dict[str, Predicted] = {}
    if not meaning.why_not(sheet, "end_float"):
        why = told.of_range("end_float")
        sample = draws["end_float"]
        values["end_float"] = _predicted("sideways play of the spool", sample, "length", {}, why)
    if sheet.drag is not None and state.pairs:
        for name, words in (("start_up_ratio", "start-up pull over running pull"),
                            ("judder", "unevenness of the pull while it slips")):  # fmt: skip
            values[name] = _predicted(words, draws[name], "ratio", {}, told.of_range(name))
    if not meaning.why_not(sheet, "spin_time"):
        spin = free_spin.spin_time(sheet, state, draws, initial_speed=start_speed)
        conditions: dict[str, Condition] = {"line": "off", "brakes": "off"}
        if start_speed is not None:
            conditions["initial_speed"] = start_speed
        started = free_spin.FLICK_WORDS if start_speed is None else "started as fast as before"
        quantity = f"free-spin time, {started}"
        values["spin_time"] = _predicted(quantity, spin, "time", conditions, told.of_spin())
    return values


def _line_values(
    sheet: ReelSheet, taken: Sequence[Taken], draws: Mapping[str, Sample], told: grounds.Grounds
) -> dict[str, Predicted]:
    room = sheet.spool
    measured = next((one.measured for one in taken if one.kind == "line_diameter"), None)
    diameter = measured.value if measured else EXAMPLE_LINE
    scatter = (measured.uncertainty if measured else 0.0) / diameter * draws["line_scatter"]
    length = spool.line_length(room.arbor_radius, room.full_radius, room.width, diameter, draws["packing"])
    why = told.of_line(diameter, measured is not None)
    conditions: dict[str, Condition] = {"line_diameter": diameter}
    sample = np.asarray(length * (1 - 2 * scatter))
    values = {"line_capacity": _predicted("line on a full spool", sample, "line_length", conditions, why)}
    return values | _per_turn(sheet, draws, told)


def _per_turn(sheet: ReelSheet, draws: Mapping[str, Sample], told: grounds.Grounds) -> dict[str, Predicted]:
    """Line for one turn of the handle; a reel without gears winds one turn of the spool."""
    radius = sheet.spool.full_radius
    level = 0.5e-3 * (2 * draws["take_up"] - 1)
    turn = 2 * pi * (radius + level)
    why = (told.sheet_words, "line level half a millimetre up or down: judgement prior")
    words = "line wound by one turn of the handle at a full spool"
    found = {"line_per_turn": (words, sheet.gear_ratio)}
    if sheet.gears is not None and sheet.gears.low_ratio is not None:
        found["line_per_turn_low"] = (f"{words}, in the low gear", sheet.gears.low_ratio)
    return {
        name: _predicted(said, turn * ratio, "line_per_turn", {"radius": radius}, why)
        for name, (said, ratio) in found.items()
    }


def _star_turns(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], told: grounds.Grounds
) -> tuple[StarTurn, ...]:
    drag = sheet.drag
    if drag is None or not state.pairs:
        return ()
    rows = []
    step = 0.5 if drag.turns_to_full <= 8 else 1.0
    if drag.lever:
        step = drag.turns_to_full / LEVER_STEPS
    radius = sheet.spool.full_radius
    for turns in np.append(np.arange(0.0, drag.turns_to_full - 1e-9, step).round(6), drag.turns_to_full):
        clamp = drag_train.clamp_at(drag, float(turns), draws, draws["spring_force"])
        pull = drag_train.spool_torque(sheet, state, draws, clamp) / radius
        conditions = {"radius": radius, "star_turns": float(turns)}
        why = told.of_star()
        rows.append(StarTurn(float(turns), _predicted("running pull", pull, "force", conditions, why)))
    return tuple(rows)
