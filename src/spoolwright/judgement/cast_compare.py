"""What would some works change in this cast? The same throw, the same draws, with and without them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import ENDS, CastCase, cast_case, reckoned
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.same_arm import speed_with

SURE = 0.95
"""Share of the draws that must agree before a gain or a loss is called one."""


@dataclass(frozen=True)
class Compared:
    """One set of works against the reel as it is, pair by pair.

    `untouched`: the brake as it stands today; `gain` and `more_slack` [m] belong to it. `again`: the brake
    set anew for the slack of before, with `gain_again`; None where the reel has no brake of its own or it
    was measured.
    """

    works: tuple[str, ...]
    untouched: CastCase
    gain: Predicted
    more_slack: Predicted
    again: CastCase | None
    gain_again: Predicted | None


def compared(today: CastCase, works: Sequence[str], known: Known) -> Compared | None:
    """Set a cast after some works beside the one before them.

    Parameters
    ----------
    today : CastCase
        The cast as the reel is **[SI]**.
    works : sequence of str
        Ids of works **[-]**.
    known : Known
        What `know` made of this reel, the one that `today` was made from **[SI]**.

    Returns
    -------
    Compared or None
        Differences **[m]** with their 90 % intervals; None where this kind of reel has no cast.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel.

    Source
    ------
    JCGM 101:2008; differences of paired draws.

    Examples
    --------
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.judgement.throw import Throw
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-58r"), {}, samples=200, seed=1)
    >>> today = cast_case(known.sheet, throw=Throw(0.150, 55.0), known=known)
    >>> hybrid = compared(today, ["hybrid-spool-bearings"], known)
    >>> abs(hybrid.gain.middle) < 0.02 * today.values["distance"].middle
    True
    """
    if today.why_not:
        return None
    held = today.throw.brake if today.share is None else BrakeSetting(share=today.share)
    untouched = _with(today, works, held, known)
    again = None
    if today.share is not None:
        slack = max(today.values["peak_slack"].middle, 1e-3)
        again = _with(today, works, BrakeSetting(slack=slack), known)
    return Compared(
        works=tuple(works),
        untouched=untouched,
        gain=_difference("distance", untouched, today),
        more_slack=_difference("peak_slack", untouched, today),
        again=again,
        gain_again=None if again is None else _difference("distance", again, today),
    )


def _with(today: CastCase, works: Sequence[str], brake: BrakeSetting, known: Known) -> CastCase:
    """The same arm throws: with a lighter spool it throws a little faster."""
    assert today.inputs is not None
    throw = replace(today.throw, brake=brake, diameter=today.diameter)
    after = reckoned(known, tuple(works), throw)[0]
    now = today.inputs.middle()
    faster = float(np.ravel(speed_with(now, after.middle()) / now.plain["release_speed"])[0])
    throw = replace(throw, speed=throw.speed * faster)
    return cast_case(known.sheet, None, works, throw=throw, known=known)


def _difference(name: str, after: CastCase, before: CastCase) -> Predicted:
    return difference(after.values[name].quantity, after.samples[name] - before.samples[name])


def difference(quantity: str, sample: Sample) -> Predicted:
    """A difference of two lengths of line, draw by draw, as its middle and 90 % interval.

    Parameters
    ----------
    quantity : str
        What it is, in words **[-]**.
    sample : array
        Differences **[m]**, shape `(n,)`.

    Returns
    -------
    Predicted
        In **[m]**.

    Source
    ------
    JCGM 101:2008.

    Examples
    --------
    >>> difference("more", np.zeros(100)).middle
    0.0
    """
    low, middle, high = (float(end) for end in np.quantile(sample, [ENDS[0], 0.5, ENDS[1]]))
    spread = float(np.std(sample, ddof=1))
    return Predicted(f"{quantity}, the difference", middle, low, high, spread, "line_length")
