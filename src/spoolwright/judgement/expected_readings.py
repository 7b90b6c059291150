"""What would each kind of reading have been, for every draw of what is not known?"""

from __future__ import annotations

from collections.abc import Callable, Mapping

import numpy as np

from spoolwright import quantities
from spoolwright.judgement import drag_train, free_spin, meaning
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.taken import Taken
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.sheets.reel_sheet import ReelSheet

DAY_TO_DAY = {
    "pull_full": 0.03,
    "pull_run": 0.03,
    "pull_start": 0.05,
    "drag_torque": 0.03,
    "start_up_ratio": 0.03,
    "judder": 0.15,
    "spin_time": 0.08,
    "stop_time": 0.08,
    "end_float": 0.1,
    "handle_torque": 0.15,
}
"""How far the same reel, read again on another day, comes out differently, as a share: judgement prior."""


def deviation(one: Taken) -> float:
    """How far this reading may lie from what a right draw says.

    Parameters
    ----------
    one : Taken
        A reading of one of the kinds of DAY_TO_DAY **[SI]**.

    Returns
    -------
    float
        Standard deviation **[unit of the reading]**, above 0.

    Notes
    -----
    The reading's own uncertainty and the day-to-day scatter of its kind, added as squares.

    Source
    ------
    JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> from spoolwright.bench.uncertainty import Measured
    >>> round(deviation(Taken("start_up_ratio", Measured(1.0, 0.04, "ratio"))), 3)
    0.05
    """
    scatter = DAY_TO_DAY[one.kind] * abs(one.measured.value)
    return float(np.hypot(one.measured.uncertainty, scatter)) or 1e-9


def expected(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    one: Taken,
    start_speed: float | None = None,
) -> Sample | str | None:
    """What each draw says that a reading should have been.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        The reel as the reading found it **[SI]**.
    draws : mapping of str to array
        Draws by name, each of shape `(n,)` **[SI]**.
    one : Taken
        The reading, with its conditions **[SI]**.
    start_speed : float or None
        Measured speed at the start of a spin **[rad/s]**; None: the house's flick.

    Returns
    -------
    array, str or None
        Expected readings **[unit of the reading]**, shape `(n,)`; words where it cannot be used; None for
        a kind of reading that says nothing here.

    Source
    ------
    mechanics, through drag_train and free_spin.

    Examples
    --------
    >>> from spoolwright.bench.uncertainty import Measured
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> pull = Taken("pull_run", Measured(20.0, 0.5, "force"))
    >>> expected(sheet, as_built(sheet), {}, pull)
    'The running pull of 2.04 kg was taken at an unknown radius or star: it says nothing of the friction.'
    """
    if one.kind not in DAY_TO_DAY:
        return None
    if one.kind in _PLAIN:
        return None if meaning.why_not(sheet, one.kind) else draws[one.kind]
    if one.kind in ("spin_time", "stop_time"):
        if meaning.why_not(sheet, one.kind) or (one.kind == "stop_time" and start_speed is None):
            return None
        on = one.word("line") == "on"
        return free_spin.spin_time(sheet, state, draws, line_on=on, initial_speed=start_speed)
    if sheet.drag is None or not state.pairs:
        return None
    return _DRAG_READINGS[one.kind](sheet, state, draws, one)


_PLAIN = ("start_up_ratio", "judder", "end_float", "handle_torque")


def _clamp(sheet: ReelSheet, draws: Mapping[str, Sample], turns: float | None) -> Sample:
    assert sheet.drag is not None
    if turns is None:
        return drag_train.greatest_clamp(sheet.drag, draws, draws["spring_force"])[0]
    return drag_train.clamp_at(sheet.drag, turns, draws, draws["spring_force"])


def _torque(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], turns: float | None) -> Sample:
    return drag_train.spool_torque(sheet, state, draws, _clamp(sheet, draws, turns))


def _full(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample:
    radius = one.number("radius") or sheet.spool.full_radius
    return _torque(sheet, state, draws, None) / radius


def _running(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample | str:
    radius, turns = one.number("radius"), one.number("star_turns")
    if radius is None or turns is None:
        return _unknown(one, f"radius or {setting_of(sheet).control}")
    return _torque(sheet, state, draws, turns) / radius


def _starting(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample | str:
    running = _running(sheet, state, draws, one)
    return running if isinstance(running, str) else running * draws["start_up_ratio"]


def _spool(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample | str:
    turns = one.number("star_turns")
    if turns is None:
        return _unknown(one, setting_of(sheet).control)
    return _torque(sheet, state, draws, turns)


def _unknown(one: Taken, what: str) -> str:
    said = quantities.show(one.measured.value, one.measured.dimension)
    name = {"pull_run": "running pull", "pull_start": "start-up pull", "drag_torque": "drag torque"}[one.kind]
    return f"The {name} of {said} was taken at an unknown {what}: it says nothing of the friction."


_DRAG_READINGS: Mapping[str, Callable[[ReelSheet, ReelState, Mapping[str, Sample], Taken], Sample | str]] = {
    "pull_full": _full,
    "pull_run": _running,
    "pull_start": _starting,
    "drag_torque": _spool,
}
