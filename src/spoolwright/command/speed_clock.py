"""How `spoolwright speed` takes times: in turn, so that a disturbance meets both sides of a comparison."""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np


@dataclass(frozen=True)
class Error:
    """How far some answers are from the reference, of its size: in the middle and at worst."""

    middle: float
    worst: float

    @staticmethod
    def of(got: Sequence[float], wanted: Sequence[float]) -> Error:
        apart = np.abs(np.asarray(got) / np.asarray(wanted) - 1)
        return Error(float(np.median(apart)), float(np.max(apart)))


def processor_seconds(call: Callable[[], Any], runs: int) -> float:
    """Time that one core works on it, which others on the machine lengthen less than the time on the wall."""
    return min(_seconds(call, time.thread_time) for _ in range(runs))


def in_turn(first: Callable[[], Any], second: Callable[[], Any], runs: int) -> tuple[float, float]:
    """Processor time of two calls, taken in turn; the best of each."""
    both = [(_seconds(first, time.thread_time), _seconds(second, time.thread_time)) for _ in range(runs)]
    return min(one for one, _ in both), min(other for _, other in both)


def in_turn_on_the_wall(
    first: Callable[[], Any], second: Callable[[], Any], runs: int
) -> tuple[float, float]:
    """As `in_turn`, by the clock: for what uses more than one core."""
    both = [(_seconds(first, time.perf_counter), _seconds(second, time.perf_counter)) for _ in range(runs)]
    return min(one for one, _ in both), min(other for _, other in both)


def unevenness(call: Callable[[], Any], runs: int = 60) -> float:
    """How much longer than at its best the machine usually takes for the same short work."""
    took = [_seconds(call, time.thread_time) for _ in range(runs)]
    return float(np.median(took)) / min(took)


def load() -> float | None:
    """How many programs wanted a core in the last minute, where the system tells."""
    return os.getloadavg()[0] if hasattr(os, "getloadavg") else None


def _seconds(call: Callable[[], Any], clock: Callable[[], float]) -> float:
    began = clock()
    call()
    return clock() - began
