"""What a gauge's maker says about it: how far off it may be, and the step of its display."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

from spoolwright.bench.budget import RECTANGLE

_NUMBERS = ("accuracy_of_reading", "accuracy_of_range", "resolution", "range", "way_unsure", "zero_unsure")


@dataclass(frozen=True)
class Gauge:
    """A force gauge or scale as its sheet describes it; what is not known stays None.

    Parameters
    ----------
    accuracy_of_reading : float or None
        Largest error as a fraction of what it shows [-], zero or more: 0.005 for "0.5 % of reading".
    accuracy_of_range : float or None
        Largest error as a fraction of its full scale [-], zero or more; needs `range`.
    resolution : float or None
        Step of the display [N], above zero.
    range : float or None
        Full scale [N], above zero.
    way_unsure : float
        Standard uncertainty of what the line's way to the gauge takes, as a share of the pull [-].
    zero_unsure : float
        Standard uncertainty of the zero that was taken off [N].

    Raises
    ------
    ValueError
        A negative or endless value, an accuracy of the range without the range.

    Notes
    -----
    A stated limit of error is read as a rectangle: standard uncertainty = limit / sqrt(3).

    Source
    ------
    JCGM 100:2008, 4.3.7.

    Examples
    --------
    >>> round(Gauge(accuracy_of_reading=0.005).gain, 6)
    0.002887
    """

    accuracy_of_reading: float | None = None
    accuracy_of_range: float | None = None
    resolution: float | None = None
    range: float | None = None
    way_unsure: float = 0.0
    zero_unsure: float = 0.0

    def __post_init__(self) -> None:
        for name in _NUMBERS:
            value = getattr(self, name)
            if value is not None and not (isfinite(value) and value >= 0):
                raise ValueError(f"{name} must be zero or more and finite; came {value}")
        if self.accuracy_of_range and not self.range:
            raise ValueError("accuracy_of_range needs range: half a per cent of what?")

    @property
    def stated(self) -> bool:
        """Whether anything is known about how true it reads."""
        return self.accuracy_of_reading is not None or self.accuracy_of_range is not None

    @property
    def gain(self) -> float:
        """Standard uncertainty of its scale, as a fraction of the reading."""
        return (self.accuracy_of_reading or 0.0) * RECTANGLE

    @property
    def offset(self) -> float:
        """Standard uncertainty of its zero in newtons, the same for readings that lie close together."""
        return (self.accuracy_of_range or 0.0) * (self.range or 0.0) * RECTANGLE
