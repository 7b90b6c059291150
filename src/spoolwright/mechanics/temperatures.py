"""What a run did to a drag: temperatures against time, and the questions that a bench asks of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

Array = NDArray[np.float64]


@dataclass(frozen=True)
class StackTemperatures:
    """Temperatures of a drag through a run and after it; no case axis where all inputs are floats.

    `time` (t,) [s]; `faces` (cases, f, t), `layers` (cases, l, t), `bodies` (cases, b, t) [K]; `pull_left`
    (cases, t), the share of the pull that fade has left [-]; `run_end`, the position of the run's end in
    `time`; `heat_in`, `heat_lost`, `heat_stored` (cases,) at the last moment [J].
    """

    time: Array
    faces: Array
    layers: Array
    bodies: Array
    pull_left: Array
    run_end: int
    heat_in: Number
    heat_lost: Number
    heat_stored: Number

    @property
    def hottest_face(self) -> Array:
        """Temperature of the hottest slipping face against time [K], shape (cases, t)."""
        return np.asarray(np.max(self.faces, axis=-2))

    @property
    def hottest(self) -> Array:
        """Temperature of the hottest place of the stack, faces and layers [K], shape (cases, t)."""
        return np.asarray(np.maximum(self.hottest_face, np.max(self.layers, axis=-2)))

    @property
    def peak(self) -> Number:
        """Highest temperature that a slipping face reaches [K]."""
        return arguments.plain(np.max(self.hottest_face, axis=-1))

    @property
    def after_run(self) -> Number:
        """Temperature of the hottest face at the end of the run [K]."""
        return arguments.plain(self.hottest_face[..., self.run_end])

    @property
    def pull_lost(self) -> Number:
        """Largest share of the pull that fade takes during the run [-]."""
        return arguments.plain(1 - np.min(self.pull_left[..., : self.run_end + 1], axis=-1))

    def time_until(self, limits: Any) -> Number:
        """Time from the start until a face first reaches its limit [s]; infinite where none does.

        `limits` [K]: one for all faces, one for each face (f,), or for each case and face (cases, f).
        """
        over = self.faces - np.asarray(limits, dtype=np.float64)[..., np.newaxis]
        return arguments.plain(np.min(_first_crossing(self.time, over), axis=-1))

    def wait_until_below(self, temperature: Number) -> Number:
        """Time after the run until the whole stack is cooler than this [s]; infinite: not while watched.

        A stack that heats its cooler parts first is followed: what counts is the last moment above.
        """
        limit = np.asarray(temperature, dtype=np.float64)[..., np.newaxis]
        under = limit - self.hottest[..., self.run_end :]
        back = _first_crossing(-self.time[self.run_end :][::-1], -under[..., ::-1])
        found = np.where(np.isinf(back), 0.0, -back - self.time[self.run_end])
        return arguments.plain(np.where(under[..., -1] < 0, np.inf, found))


def _first_crossing(time: Array, over: Array) -> Array:
    """First moment at which `over` is zero or more, straight between two moments; infinite where never."""
    reached = over >= 0
    at = np.argmax(reached, axis=-1)
    before = np.maximum(at - 1, 0)
    low, high = (np.take_along_axis(over, i[..., np.newaxis], -1)[..., 0] for i in (before, at))
    part = np.where(at > 0, -low / np.where(high > low, high - low, 1.0), 0.0)
    found = time[before] + part * (time[at] - time[before])
    return np.where(np.any(reached, axis=-1), found, np.inf)
