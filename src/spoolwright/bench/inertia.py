"""A spool's moment of inertia from what was typed and recorded for one of the methods."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from spoolwright.bench import inertia_fall, inertia_pendulum, inertia_ring, inertia_shape, typed_quantity
from spoolwright.bench.budget import RECTANGLE
from spoolwright.bench.inertia_reading import InertiaReading
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.propagation import Known
from spoolwright.bench.swing import Swing
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets import inertia_methods
from spoolwright.sheets.inertia_methods import Asked

BY_HAND = 0.10
"""Standard uncertainty of a time that a thumb starts and stops [s]: judgement prior."""

BY_EYE = 0.2
"""Standard uncertainty of an amplitude, as a share: it is judged by eye and dies away; judgement prior."""

MOST_SWINGS = 1000

_TIMED = ("time", "swings")

Inputs = Mapping[str, Known]


def known(asked: Asked, text: str, *, by_hand: bool = False, instrument: Instrument | None = None) -> Known:
    """One input as it was typed, with what else its uncertainty comes from.

    Parameters
    ----------
    asked : Asked
        Which input [-].
    text : str
        What was typed, tries parted by semicolons [-].
    by_hand : bool
        Whether times were started and stopped by a thumb, not read off a video or a recording [-].
    instrument : Instrument or None
        The one of the shop's own that it was taken with [SI]; one for another dimension does not count.

    Returns
    -------
    Known
        Value with its standard uncertainty [SI unit of the input].

    Raises
    ------
    NotAQuantity
        No number, or a unit that is missing or wrong.
    Unreadable
        Nothing typed, a value that is not above zero, more swings than anybody counts.

    Notes
    -----
    A study of the instrument has seen the thumb, and a stated limit that is wider than the thumb holds it;
    else the thumb is added. Two inputs from one instrument are taken as independent.

    Source
    ------
    JCGM 100:2008, 4.2 and 4.3; BY_HAND and BY_EYE are judgement priors.

    Examples
    --------
    >>> asked = inertia_methods.method("fall").asks[1]
    >>> round(known(asked, "1.60 s", by_hand=True).measured.uncertainty, 3)
    0.1
    """
    own = instrument if instrument and instrument.dimension == asked.dimension else None

    def typed(also: tuple[str, float] | None = None) -> Known:
        return typed_quantity.read(asked.words, text, asked.dimension, also=also, instrument=own)

    if asked.dimension == "count":
        return _count(asked, typed().measured.value)
    if asked.dimension == "time" and by_hand and not _holds_the_thumb(own):
        return typed(("started and stopped by hand", BY_HAND))
    if asked.dimension == "angle":
        return typed(("judged by eye, and it dies away", BY_EYE * typed().measured.value))
    return typed()


def _holds_the_thumb(own: Instrument | None) -> bool:
    return own is not None and (own.study is not None or (own.limit or 0.0) * RECTANGLE >= BY_HAND)


def _count(asked: Asked, value: float) -> Known:
    if not 1 <= value <= MOST_SWINGS:
        raise Unreadable(f"{value:g} swings cannot be", asked.words, f"1 to {MOST_SWINGS}")
    return Known(asked.words, Measured(value, 0.0, "count"))


def read(
    method: str,
    given: Inputs,
    swing: Swing | None = None,
    together: Mapping[tuple[str, str], float] | None = None,
) -> InertiaReading:
    """The inertia by one method, from its inputs.

    Parameters
    ----------
    method : str
        Id of a method [-], as `sheets.inertia_methods` lists them.
    given : mapping of str to Known
        Its inputs by key [SI]; `time` and `swings` may be left out where there is a record.
    swing : Swing or None
        The record of a swing [s, 1/s], for the methods that take one.
    together : mapping of pairs of names to float or None
        Correlation of two inputs [-], such as that of two masses from one scale.

    Returns
    -------
    InertiaReading
        Inertia [kg m^2] with its standard uncertainty and budget.

    Raises
    ------
    Unreadable
        Inputs that are missing, or that make no sense together.
    KeyError
        A method that is not listed.

    Source
    ------
    The module of each method.

    Examples
    --------
    >>> asks = inertia_methods.method("spring").asks
    >>> typed = ("2.40 mN m/rad", "20", "8.11 s")
    >>> given = {one.key: known(one, text) for one, text in zip(asks, typed)}
    >>> round(read("spring", given).inertia.value * 1e5, 2)
    1.0
    """
    chosen = inertia_methods.method(method)
    inputs = dict(given)
    if chosen.takes_record:
        inputs = {key: one for key, one in given.items() if key not in _TIMED} | _period(given, swing)
    wanted = [one for one in chosen.asks if not (chosen.takes_record and one.key in _TIMED)]
    missing = "; ".join(one.words.lower() for one in wanted if one.key not in inputs)
    if missing:
        raise Unreadable(f"this is missing: {missing}", "", "all that the method asks for")
    return _READERS[method](inputs, together)


def _period(given: Inputs, swing: Swing | None) -> dict[str, Known]:
    if swing is not None:
        period = Known("period of the recorded swing", swing.period)
        return {"period": period, "decay": Known("how fast the swing dies", swing.decay)}
    if any(key not in given for key in _TIMED):
        accepted = "a record of the swing, or how many swings were timed and their time"
        raise Unreadable("the time of the swing is missing", "", accepted)
    count, time = given["swings"].measured.value, given["time"]
    parts = tuple((source, way, part / count) for source, way, part in time.parts)
    value = Measured(time.measured.value / count, time.measured.uncertainty / count, "time")
    return {"period": Known(f"{time.words}, by {count:g} swings", value, parts)}


def _pendulum(method: str, given: Inputs, together: Mapping[tuple[str, str], float] | None) -> InertiaReading:
    # A damping of a few hundredths changes a pendulum's period by less than a thousandth.
    own = {key: one for key, one in given.items() if key != "decay"}
    return inertia_pendulum.read(method, given if method == inertia_pendulum.SPRING else own, together)


_READERS: Mapping[str, Callable[..., InertiaReading]] = {
    "fall": inertia_fall.read,
    **{method: partial(inertia_ring.read, method) for method in inertia_ring.METHODS},
    **{method: partial(_pendulum, method) for method in inertia_pendulum.METHODS},
    "sizes": lambda given, together: inertia_shape.read(given),
}
