"""Which turn of the star gives the pull that is wanted?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.prediction import Prediction
from spoolwright.sheets.drag_setting import DragSetting


@dataclass(frozen=True)
class TurnAdvice:
    """Turns from free that give the pull, with the range it may need; None where no turn gives it."""

    turns: float | None
    low: float | None
    high: float | None
    words: str


def star_turn_for(prediction: Prediction, target_pull: float, system: str = "metric") -> TurnAdvice:
    """The turn of the star, from free, that gives a running pull at a full spool.

    Parameters
    ----------
    prediction : Prediction
        What `predict` gave, with its table of star turns **[SI]**.
    target_pull : float
        The pull wanted **[N]**, more than 0.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    TurnAdvice
        Turns **[-]** with the 90 % range, or none, and words.

    Raises
    ------
    ValueError
        The pull is not more than 0, or the prediction has no table.

    Notes
    -----
    Read off the table; between its rows the pull is taken as straight. The range comes from the curves of
    the highest and the lowest pull.

    Source
    ------
    Our own table.

    Examples
    --------
    >>> from spoolwright.judgement.prediction import predict
    >>> from spoolwright.sheets import reel_sheet
    >>> advice = star_turn_for(predict(reel_sheet.load("tarvak-58r"), {}), 2.7 * 9.80665)
    >>> 0 < advice.turns < 5
    True
    """
    if not target_pull > 0:
        raise ValueError(f"target_pull: more than 0 is accepted; got {target_pull}")
    rows = prediction.star_turns
    if not rows:
        raise ValueError("prediction: this reel has no table of star turns")
    turns = [row.turns for row in rows]
    middle = _reached(turns, [row.pull.middle for row in rows], target_pull)
    early = _reached(turns, [row.pull.high for row in rows], target_pull)
    late = _reached(turns, [row.pull.low for row in rows], target_pull)
    return TurnAdvice(middle, early, late, _words(prediction, target_pull, (middle, early, late), system))


def _reached(turns: Sequence[float], pulls: Sequence[float], target: float) -> float | None:
    rising = np.maximum.accumulate(np.asarray(pulls))
    if rising[-1] < target:
        return None
    at = int(np.argmax(rising >= target))
    if at == 0:
        return turns[0]
    part = (target - rising[at - 1]) / (rising[at] - rising[at - 1])
    return float(turns[at - 1] + part * (turns[at] - turns[at - 1]))


def _words(
    prediction: Prediction, target: float, found: tuple[float | None, float | None, float | None], system: str
) -> str:
    middle, early, late = found
    setting = prediction.setting
    wanted = quantities.show(target, "force", system)
    last = prediction.star_turns[-1]
    if middle is None:
        most = quantities.show_interval(last.pull.low, last.pull.high, "force", system)
        if early is None:
            return f"{_nowhere(setting)} gives {wanted}: the most to expect at a full spool is {most}."
        return (
            f"{wanted} may or may not be reached: the {setting.control} hard on is expected to give {most}."
        )
    if setting.is_lever:
        ends = [setting.at(end) if end is not None else "not at all" for end in found]
        return (
            f"{wanted} at a full spool: lever at about {ends[0]} ({ends[1]} if it bites early, {ends[2]} if "
            "it bites late), with the preset as far on as leaves the spool free. Back the preset off to have "
            "this pull at the strike stop; set it with a scale on the line."
        )
    until = f"{late:.1f}" if late is not None else "not at all"
    return (
        f"{wanted} at a full spool: {setting.control} about {middle:.1f} of {last.turns:g} turns from free "
        f"({early:.1f} if it bites early, {until} if it bites late). Set it with a scale on the line."
    )


def _nowhere(setting: DragSetting) -> str:
    return "No place of the lever" if setting.is_lever else f"No turn of the {setting.control}"
