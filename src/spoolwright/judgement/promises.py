"""Which readings may a set of works promise, and how: at least, at most, or between?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from spoolwright.judgement.prediction import Predicted, Prediction
from spoolwright.judgement.taken import Condition, Taken
from spoolwright.judgement.works import Work


@dataclass(frozen=True)
class PromisedReading:
    """A reading that an option may promise; one end is None where only the other matters."""

    reading_kind: str
    predicted: Predicted
    low: float | None
    high: float | None


_SIDES = {
    "pull_full": ("pull_full_spool", True, True),
    "start_up_ratio": ("start_up_ratio", False, True),
    "judder": ("judder", False, True),
    "spin_time": ("spin_time", True, False),
    "end_float": ("end_float", False, True),
}


def promised_readings(prediction: Prediction, works: Sequence[Work]) -> tuple[PromisedReading, ...]:
    """The readings that these works are meant to move, as promises that a proof can decide.

    Parameters
    ----------
    prediction : Prediction
        What the works are expected to give **[SI]**.
    works : sequence of Work
        The works **[-]**.

    Returns
    -------
    tuple of PromisedReading
        Ends of the 90 % interval **[SI]**; only the end that matters where one is enough.

    Source
    ------
    Trade sense: a start-up ratio is promised as at most, a spin as at least.

    Examples
    --------
    >>> from spoolwright.judgement.prediction import predict
    >>> from spoolwright.judgement.works import chosen
    >>> from spoolwright.sheets import reel_sheet
    >>> prediction = predict(reel_sheet.load("tarvak-58r"), {}, ["carbon-drag-set"], samples=200)
    >>> works = chosen(["carbon-drag-set"], "round multiplier")
    >>> [promised.reading_kind for promised in promised_readings(prediction, works)]
    ['pull_full', 'start_up_ratio', 'judder']
    """
    moved = {kind for work in works for kind in work.readings}
    promises = []
    for kind, (key, low, high) in _SIDES.items():
        value = prediction.values.get(key)
        if kind in moved and value is not None:
            ends = (value.low if low else None, value.high if high else None)
            promises.append(PromisedReading(kind, value, *ends))
    return tuple(promises)


def at_radius(promised: PromisedReading, radius: float) -> PromisedReading:
    """A promised pull where the line leaves at another radius: the torque stays, the pull changes.

    Parameters
    ----------
    promised : PromisedReading
        A promise **[SI]**; one that is no pull comes back as it is.
    radius : float
        Radius at which it will be proved **[m]**, more than 0.

    Returns
    -------
    PromisedReading
        The same promise for that radius **[SI]**.

    Raises
    ------
    ValueError
        The radius is not more than 0.

    Notes
    -----
    pull = torque / radius, so every end is multiplied by the old radius over the new one.

    Source
    ------
    Moment of a force, any text on mechanics.

    Examples
    --------
    >>> pull = Predicted("pull", 60.0, 50.0, 70.0, 6.0, "force", {"radius": 0.024})
    >>> round(at_radius(PromisedReading("pull_full", pull, 50.0, 70.0), 0.020).high, 6)
    84.0
    """
    if not radius > 0:
        raise ValueError(f"radius: more than 0 is accepted; got {radius}")
    own = promised.predicted.conditions.get("radius")
    if promised.predicted.dimension != "force" or not isinstance(own, float):
        return promised
    share, value = own / radius, promised.predicted
    there = replace(
        value,
        middle=value.middle * share,
        low=value.low * share,
        high=value.high * share,
        deviation=value.deviation * share,
        conditions={**value.conditions, "radius": radius},
    )
    low, high = (None if end is None else end * share for end in (promised.low, promised.high))
    return PromisedReading(promised.reading_kind, there, low, high)


def proving_conditions(
    promised: PromisedReading, as_found: Sequence[Taken], star_turns: float | None = None
) -> dict[str, Condition]:
    """Under which conditions this promise will be proved: as predicted, and as it was measured before.

    Parameters
    ----------
    promised : PromisedReading
        The promise **[SI]**.
    as_found : sequence of Taken
        Readings from before the work **[SI]**; the latest of the kind lends its conditions.
    star_turns : float or None
        Where the star will stand for a start-up ratio **[turn]**; None: as it was before.

    Returns
    -------
    mapping
        Conditions by their keys **[SI]**; only such as would part two readings.

    Source
    ------
    A reading without its conditions is not comparable: common practice, no source.

    Examples
    --------
    >>> from spoolwright.bench.uncertainty import Measured
    >>> ratio = Predicted("ratio", 1.09, 1.05, 1.13, 0.03, "ratio")
    >>> was = Taken("start_up_ratio", Measured(1.5, 0.03, "ratio"), {"line": "on", "radius": 0.0235,
    ...             "star_turns": 2.5, "temperature": 291.0, "pull_number": 1})
    >>> proving_conditions(PromisedReading("start_up_ratio", ratio, None, 1.13), [was])
    {'line': 'on', 'radius': 0.0235, 'star_turns': 2.5}
    """
    before = [one.conditions for one in as_found if one.kind == promised.reading_kind]
    told: dict[str, Condition] = {}
    if before and _is_alike(before[-1], promised.predicted.conditions):
        told = {key: value for key, value in before[-1].items() if key in _PARTING}
    if promised.reading_kind not in _WITHOUT_A_PULL:
        told.pop("brakes", None)
    told |= {
        key: value
        for key, value in promised.predicted.conditions.items()
        if key in _PREDICTED and key not in told or key == "radius"
    }
    if promised.reading_kind in _AT_A_SETTING and star_turns is not None:
        told["star_turns"] = star_turns
    elif promised.reading_kind not in _AT_A_SETTING:
        # With the drag hard on nobody counts turns, and a spin has none.
        told.pop("star_turns", None)
    if promised.reading_kind in _WITHOUT_A_PULL:
        told.pop("radius", None)
    return told


_PARTING = ("line", "brakes", "radius", "star_turns", "place_measured")
_PREDICTED = ("line", "brakes", "radius")
_AT_A_SETTING = ("start_up_ratio", "judder")
_WITHOUT_A_PULL = ("spin_time", "end_float")


def _is_alike(before: Mapping[str, Condition], predicted: Mapping[str, Condition]) -> bool:
    """Whether the reading before was taken with the line as the prediction has it."""
    return not before.get("line") or before["line"] == predicted.get("line", before["line"])
