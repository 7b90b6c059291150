"""A pull trace in SI, what somebody may say about its file, and what the reader found out by itself."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True)
class TraceForm:
    """Answers that go before anything found in the file; an empty one is found out.

    Columns are named by their title or by their number, counted from 1. `rate` is in samples a second and
    goes before a column of times.
    """

    delimiter: str = ""
    decimal: str = ""
    time_column: str = ""
    force_column: str = ""
    time_unit: str = ""
    force_unit: str = ""
    rate: float | None = None


@dataclass(frozen=True)
class Found:
    """How the file was read, for the page to say: every choice that was made."""

    encoding: str
    delimiter: str
    decimal: str
    header: tuple[str, ...]
    time_column: str
    force_column: str
    time_unit: str
    force_unit: str
    rate: float
    rows: int


@dataclass(frozen=True, eq=False)
class PullTrace:
    """Time [s] and pull [N] of one recording, how its file was read, and what was put right on the way."""

    time: NDArray[np.float64]
    force: NDArray[np.float64]
    found: Found
    notes: tuple[str, ...] = ()
