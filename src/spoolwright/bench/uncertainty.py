"""A measured value and how sure it is: the one shape in which readings travel through the house."""

from __future__ import annotations

from dataclasses import dataclass

COVERAGE_FACTOR = 2.0
"""k = 2: the stated interval covers about 95 % (JCGM 100:2008, 6.2 and G.6.6)."""


@dataclass(frozen=True)
class Measured:
    """A value with its standard uncertainty, both in the SI unit of `dimension`.

    `dimension` is a key of `quantities.DIMENSIONS` ("force", "length", "ratio", ...).
    """

    value: float
    uncertainty: float
    dimension: str

    @property
    def expanded(self) -> float:
        """Half-width of the stated interval: k = 2 times the standard uncertainty, SI."""
        return COVERAGE_FACTOR * self.uncertainty
