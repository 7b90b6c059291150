"""How far does this reel cast, how far does its spool run ahead of the line, and how sure is that?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import numpy as np

from spoolwright.judgement.brake_search import share_for_slack
from spoolwright.judgement.brake_setting import share_of
from spoolwright.judgement.cast_inputs import CastInputs
from spoolwright.judgement.cast_reckoned import Reckoned, reckoned
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.throw import Throw
from spoolwright.mechanics import cast
from spoolwright.sheets.reel_sheet import ReelSheet

ENDS = (0.05, 0.95)

WHY_NOT = {
    "fly": (
        "A fly is cast by the weight of its own line, which lies on the water or in the hand before the "
        "cast: the reel only keeps it. Nothing in this reel makes a cast longer or shorter."
    )
}
"""Kinds of reel of which this question has no meaning, and why."""

FIELDS = {
    "distance": ("distance of the cast", "line_length"),
    "flight_time": ("time in the air", "time"),
    "peak_slack": ("most that the spool runs ahead of the line", "line_length"),
    "peak_spool_speed": ("fastest that the spool turns", "rotation"),
}
LOSSES = {
    "payload_air_energy": "air on the payload",
    "line_air_energy": "air on the line",
    "bearing_energy": "bearings and end discs",
    "windage_energy": "air round the spool",
    "guide_energy": "level wind or lip",
    "brake_energy": "brake",
    "thumb_energy": "thumb",
    "slack_energy": "loose line set going or stopped",
    "join_energy": "jerks where slack ends",
}


@dataclass(frozen=True, eq=False)
class CastCase:
    """One throw with one reel.

    `values` by the names of FIELDS, with their 90 % intervals; `samples` the same draw by draw, so that two
    cases can be set side by side pair by pair. `middle` is the cast in the middle of all drawn, against time;
    `arguments` are those of mechanics.cast for every draw. `share` is how the brake is set, of all that the
    reel has (above 1: more than it has), None where it has none or a measured constant stands for it;
    `lip_slack` where an over-run begins [m], `over_runs` the share of the casts drawn that pass it. Where a
    cast has no meaning `why_not` says why and nothing else is there.
    """

    throw: Throw
    sheet: ReelSheet
    works: tuple[str, ...]
    why_not: str = ""
    values: Mapping[str, Predicted] = field(default_factory=dict)
    samples: Mapping[str, Sample] = field(default_factory=dict)
    inputs: CastInputs | None = None
    arguments: Mapping[str, Any] = field(default_factory=dict)
    share: float | None = None
    diameter: float = 0.0
    lip_slack: float = 0.0
    over_runs: float = 0.0
    rests_on: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    seed: int = 1

    @cached_property
    def middle(self) -> Any:
        assert self.inputs is not None
        share = 1.0 if self.share is None else self.share
        held = self.inputs.middle.arguments(share, self.throw.brake.constant)
        scalar = {name: float(np.ravel(value)[0]) for name, value in held.items()}
        return cast.trace(**scalar, variant=self.variant)

    def drawn(self, measure: str, share: float) -> Any:
        """The cast against time that lies at this share of all drawn, sorted by one of FIELDS."""
        order = np.argsort(self.samples[measure], kind="stable")
        at = int(order[round(share * (len(order) - 1))])
        one = {name: float(np.broadcast_to(value, order.shape)[at]) for name, value in self.arguments.items()}
        return cast.trace(**one, variant=self.variant)

    @property
    def losses(self) -> dict[str, float]:
        """Where the energy of the middle cast went, by the names of LOSSES [J]."""
        return {name: float(getattr(self.middle.summary, name)) for name in LOSSES}

    @property
    def variant(self) -> str:
        return "" if self.inputs is None else self.inputs.variant

    @property
    def is_fixed_spool(self) -> bool:
        return self.variant == "fixed spool"

    @property
    def has_brake(self) -> bool:
        return self.inputs is not None and self.inputs.brakes.has_any


def cast_case(
    sheet: ReelSheet,
    readings: Readings | None = None,
    works: Sequence[str] = (),
    *,
    throw: Throw,
    samples: int = 400,
    seed: int = 1,
    known: Known | None = None,
) -> CastCase:
    """Throw with this reel, as it is or as some works would leave it.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken, or None
        This reel's own readings by kind **[SI]**; none: a sound reel of this model is meant.
    works : sequence of str
        Ids of works **[-]**; none: the reel as it is.
    throw : Throw
        What is thrown and how, with the brake's setting **[SI]**.
    samples : int
        Draws **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.
    known : Known or None
        What `know` made of the same sheet and readings, so that several sets of works share it **[SI]**.

    Returns
    -------
    CastCase
        Distances and slack **[m]**, time **[s]**, spool speed **[rad/s]**.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel; more blocks than the reel has; fewer than
        100 samples.

    Notes
    -----
    The release speed is that of the payload once the spool turns in step, so the caster pays for the spool:
    two reels thrown with the same arm do not reach quite the same speed. Two sets of works with the same seed
    share every draw that the works do not touch.

    Source
    ------
    mechanics.cast; JCGM 101:2008 for the draws; docs/derivations/cast_case.md.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> case = cast_case(reel_sheet.load("tarvak-58r"), throw=Throw(0.150, 55.0), samples=100)
    >>> 100 < case.values["distance"].middle < 300
    True
    """
    works = tuple(works)
    if sheet.reel.kind in WHY_NOT:
        return CastCase(throw, sheet, works, why_not=WHY_NOT[sheet.reel.kind])
    known = known or know(sheet, readings or {}, samples=samples, seed=seed)
    return flown(reckoned(known, works, throw), throw)


def flown(made: Reckoned, throw: Throw) -> CastCase:
    """Fly a throw whose inputs have been reckoned; the brake is the throw's.

    Parameters
    ----------
    made : Reckoned
        Inputs for every draw **[SI]**.
    throw : Throw
        The throw that they were reckoned for, the brake perhaps set otherwise **[SI]**.

    Returns
    -------
    CastCase
        As cast_case gives it **[SI]**.

    Raises
    ------
    ValueError
        More blocks than the reel has.

    Source
    ------
    mechanics.cast.
    """
    inputs, known = made.inputs, made.known
    share = _share(throw, inputs)
    arguments = inputs.arguments(1.0 if share is None else share, throw.brake.constant)
    casts = cast.simulate(**arguments, variant=inputs.variant)
    found = {name: _filled(getattr(casts, name), known.samples) for name in FIELDS}
    return CastCase(
        throw=throw,
        sheet=known.sheet,
        works=made.works,
        values={name: predicted(name, found[name]) for name in FIELDS},
        samples=found,
        inputs=inputs,
        arguments=arguments,
        share=share,
        diameter=made.diameter,
        lip_slack=inputs.lip_slack,
        over_runs=float(np.mean(found["peak_slack"] > inputs.lip_slack)),
        rests_on=_rests_on(known, inputs, throw),
        notes=(*made.notes, *_line_short(casts.landed, known.samples)),
        seed=known.seed,
    )


def _share(throw: Throw, inputs: CastInputs) -> float | None:
    if throw.brake.constant is not None or not inputs.brakes.has_any or inputs.variant == "fixed spool":
        return None
    if not throw.brake.is_searched:
        return share_of(throw.brake, inputs.brakes)
    found = share_for_slack(inputs.middle, throw.brake.slack or inputs.lip_slack / 2)
    # A brake that would have to be stronger than the reel's is set as hard as it goes.
    return 1.0 if found is None else min(found, 1.0)


def _filled(value: Any, samples: int) -> Sample:
    return np.array(np.broadcast_to(np.asarray(value, dtype=np.float64), (samples,)))


def predicted(name: str, sample: Sample) -> Predicted:
    """One of FIELDS as its middle and 90 % interval.

    Parameters
    ----------
    name : str
        Which **[-]**.
    sample : array
        Draws **[unit of the field]**, shape `(n,)`.

    Returns
    -------
    Predicted
        In SI.

    Source
    ------
    JCGM 101:2008, 7.7.

    Examples
    --------
    >>> predicted("distance", np.linspace(90.0, 110.0, 101)).middle
    100.0
    """
    words, dimension = FIELDS[name]
    low, middle, high = (float(end) for end in np.quantile(sample, [ENDS[0], 0.5, ENDS[1]]))
    return Predicted(words, middle, low, high, float(np.std(sample, ddof=1)), dimension)


def _line_short(landed: Any, samples: int) -> tuple[str, ...]:
    out = 1 - float(np.mean(_filled(landed, samples)))
    if out == 0:
        return ()
    return (f"In {out:.0%} of the casts drawn the line runs out before the payload lands.",)


def _rests_on(known: Known, inputs: CastInputs, throw: Throw) -> tuple[str, ...]:
    sheet, brakes = known.sheet.reel, inputs.brakes
    read = [one for one in known.used if one.kind in ("spin_time", "stop_time")]
    own = "its own spin-down" if read else "bearings and oil as the sheet names them"
    said = [
        f"reel sheet of the {sheet.maker} {sheet.model}",
        f"{own}; end discs, level wind, air round the spool: judgement priors",
        f"drag of {throw.shape} in the air: no measured value is known, judgement prior",
        "air on the line: two to three times a flat plate's friction, judgement prior",
        "release speed within 5 %: judgement prior; it has never been measured in a cast that we know of",
        "the line follows the payload's path; a belly in the wind is not reckoned",
    ]
    if inputs.variant == "fixed spool":
        return (said[0], *said[2:])
    if brakes.guess:
        said.append(brakes.guess)
    elif brakes.has_any:
        said.append("friction of the brake within 25 %: judgement prior")
    return tuple(said)
