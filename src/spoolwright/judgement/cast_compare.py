"""What would some works change in this cast? The same throw, the same draws, with and without them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import ENDS, CastCase, flown
from spoolwright.judgement.cast_reckoned import Reckoned, reckoned
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.same_arm import speed_with
from spoolwright.judgement.throw import Throw

LEAST_SLACK = 1e-3
"""Slack [m] that counts as some, where there was none before."""


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
    >>> from spoolwright.judgement.cast_case import cast_case
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
    made, throw = _same_arm(today, tuple(works), known)
    held = today.throw.brake if today.share is None else BrakeSetting(share=today.share)
    untouched = flown(made, replace(throw, brake=held))
    again = None
    if today.share is not None:
        slack = max(float(today.middle.summary.peak_slack), LEAST_SLACK)
        again = flown(made, replace(throw, brake=BrakeSetting(slack=slack)))
    return Compared(
        works=tuple(works),
        untouched=untouched,
        gain=_difference("distance", untouched, today),
        more_slack=_difference("peak_slack", untouched, today),
        again=again,
        gain_again=None if again is None else _difference("distance", again, today),
    )


def _same_arm(today: CastCase, works: tuple[str, ...], known: Known) -> tuple[Reckoned, Throw]:
    """The same arm throws: with a lighter spool it throws a little faster."""
    assert today.inputs is not None
    throw = replace(today.throw, diameter=today.diameter)
    made = reckoned(known, works, throw)
    now = today.inputs.middle
    faster = float(np.ravel(speed_with(now, made.inputs.middle) / now.plain["release_speed"])[0])
    speed = np.asarray(made.inputs.plain["release_speed"]) * faster
    inputs = made.inputs.with_plain(release_speed=speed)
    return replace(made, inputs=inputs), replace(throw, speed=throw.speed * faster)


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
