"""Which readings may a set of works promise, and how: at least, at most, or between?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spoolwright.judgement.prediction import Predicted, Prediction
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
