"""What would change this cast, and by how much? One thing at a time, in the middle cast."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright.judgement.brake_search import shares_for_slack, stacked
from spoolwright.judgement.cast_case import CastCase
from spoolwright.judgement.cast_inputs import CastInputs
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.same_arm import speed_with
from spoolwright.mechanics import cast, spool

GUMMED, CLEANER = 10.0, 0.5
"""Drag of gummed bearings over clean ones, and of the best over clean ones: judgement priors."""

LIGHTER, THINNER, HARDER = 0.8, 0.8, 1.3
LEAST_SLACK = 1e-3


@dataclass(frozen=True)
class Change:
    """One thing changed: the cast with the brake untouched, and with it set again for the slack of before.

    `distance` and `slack` are the middle cast's [m] with the brake as it was; `gain` and `more_slack` what
    that is over before. `again` is the brake's share that keeps the slack of before, `gain_again` the metres
    with it; None where the reel has no brake, or not enough.
    """

    key: str
    what: str
    distance: float
    slack: float
    gain: float
    more_slack: float
    again: float | None
    gain_again: float | None

    @property
    def like_for_like(self) -> float:
        """What it gains at the slack of before where that can be set, else with the brake untouched [m]."""
        return self.gain if self.gain_again is None else self.gain_again


@dataclass(frozen=True)
class Matters:
    """The middle cast, with what would change it, in the order in which it would change the distance."""

    distance: float
    slack: float
    share: float | None
    ideal: float
    changes: tuple[Change, ...]

    def of(self, key: str) -> Change | None:
        return next((change for change in self.changes if change.key == key), None)


def what_matters(case: CastCase) -> Matters | None:
    """What would change this cast: bearings, spool, line, brake, level wind, each alone.

    Parameters
    ----------
    case : CastCase
        The cast as it is **[SI]**.

    Returns
    -------
    Matters or None
        Distances and slack **[m]**; None where the reel casts by no spool of its own.

    Notes
    -----
    The same arm throws: the release speed stays, except that a lighter spool is thrown faster. `ideal` is the
    cast with a perfect thumb: no slack, and no more braking than that takes.

    Source
    ------
    mechanics.cast.

    Examples
    --------
    >>> from spoolwright.judgement.cast_case import cast_case
    >>> from spoolwright.judgement.throw import Throw
    >>> from spoolwright.sheets import reel_sheet
    >>> case = cast_case(reel_sheet.load("tarvak-58r"), throw=Throw(0.150, 55.0), samples=100)
    >>> matters = what_matters(case)
    >>> matters.of("bearings gummed").gain < 0 < matters.of("bearings freer").more_slack
    True
    """
    if case.inputs is None or case.is_fixed_spool:
        return None
    middle = case.inputs.middle
    share = 1.0 if case.share is None else case.share
    changed = {key: (words, other) for key, (words, change) in _CHANGES.items()
               if (other := change(middle)) is not None}  # fmt: skip
    inputs = [middle, *(other for _, other in changed.values())]
    names = [*changed]
    if middle.brakes.has_any:
        inputs.append(middle)
        names.append(HARDER_BRAKE)
    shares = [share] * (1 + len(changed)) + [share * HARDER] * (len(inputs) - 1 - len(changed))
    distance, slack = _flown(inputs, shares, case)
    again = _again(inputs[1 : 1 + len(changed)], distance[0], float(slack[0]), case)
    found = [
        Change(
            key=key,
            what=changed[key][0] if key in changed else f"the brake set {HARDER - 1:.0%} harder",
            distance=float(distance[at]),
            slack=float(slack[at]),
            gain=float(distance[at] - distance[0]),
            more_slack=float(slack[at] - slack[0]),
            again=again.get(at, (None, None))[0],
            gain_again=again.get(at, (None, None))[1],
        )
        for at, key in enumerate(names, start=1)
    ]
    ideal = cast.simulate(**middle.arguments(0.0), variant="ideal thumb").distance
    ordered = tuple(sorted(found, key=lambda change: -abs(change.like_for_like)))
    return Matters(float(distance[0]), float(slack[0]), case.share, float(np.ravel(ideal)[0]), ordered)


HARDER_BRAKE = "brake harder"


def _flown(inputs: Sequence[CastInputs], shares: Sequence[float], case: CastCase) -> tuple[Sample, Sample]:
    arguments = stacked(inputs, shares, case.throw.brake.constant)
    flown = cast.simulate(**arguments, variant=inputs[0].variant)
    return np.ravel(flown.distance), np.ravel(flown.peak_slack)


def _again(
    inputs: Sequence[CastInputs], before: float, slack: float, case: CastCase
) -> dict[int, tuple[float, float]]:
    """For each change by its place: the brake that keeps the slack of before, and what is gained with it."""
    if case.share is None or not inputs:
        return {}
    shares = shares_for_slack(inputs, max(slack, LEAST_SLACK))
    places = [at for at, share in enumerate(shares) if share is not None and share <= 1.0]
    if not places:
        return {}
    found = [float(shares[at] or 0.0) for at in places]
    distance, _ = _flown([inputs[at] for at in places], found, case)
    rows = zip(places, found, distance, strict=True)
    return {at + 1: (share, float(far - before)) for at, share, far in rows}


def _spool_lighter(middle: CastInputs) -> CastInputs:
    lighter = middle.with_plain(spool_inertia=np.asarray(middle.plain["spool_inertia"]) * LIGHTER)
    return lighter.with_plain(release_speed=speed_with(middle, lighter))


def _line_thinner(middle: CastInputs) -> CastInputs:
    """The same spool full of thinner line: more of it, and less of it in the air."""
    plain = middle.plain
    diameter = np.asarray(plain["line_diameter"]) * THINNER
    room = (plain["arbor_radius"], plain["full_radius"], plain["spool_width"])
    length = spool.line_length(*room, diameter, plain["packing"])
    return middle.with_plain(line_diameter=diameter, line_length=np.asarray(length))


def _no_train(middle: CastInputs) -> CastInputs | None:
    drag = middle.drag
    if not np.any(drag.train_constant + drag.train_viscous + drag.train_quadratic > 0):
        return None
    return middle.with_drag(drag.without_train())


_CHANGES: Mapping[str, tuple[str, Callable[[CastInputs], CastInputs | None]]] = {
    "bearings freer": (
        "half of the drag of bearings and end discs",
        lambda middle: middle.with_drag(middle.drag.bearings_times(CLEANER)),
    ),
    "bearings gummed": (
        "bearings gummed, ten times the drag",
        lambda middle: middle.with_drag(middle.drag.bearings_times(GUMMED)),
    ),
    "spool lighter": ("a spool with a fifth less inertia", _spool_lighter),
    "line thinner": ("a line a fifth thinner", _line_thinner),
    "level wind out": ("the level wind taken out", _no_train),
}
