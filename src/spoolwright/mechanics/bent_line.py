"""The line that a stepped shaft takes under forces across it, piece by piece and exact."""

from __future__ import annotations

from math import pi

import numpy as np
from numpy.typing import NDArray


class BentLine:
    """Moment, slope and deflection of a shaft under point loads, exact between the breaks."""

    def __init__(
        self,
        loads: NDArray[np.float64],
        points: NDArray[np.float64],
        ends: NDArray[np.float64],
        widths: NDArray[np.float64],
        youngs_modulus: float,
        asked: NDArray[np.float64],
    ) -> None:
        lead = points.shape[:-1]
        edges = np.broadcast_to(np.append(0.0, ends), (*lead, len(ends) + 1))
        self.x = np.sort(np.concatenate([points, edges, asked], axis=-1), axis=-1)
        over = np.maximum(self.x[..., :, None] - points[..., None, :], 0.0)
        self.moment = -np.sum(over * loads[..., None, :], axis=-1)
        step = np.diff(self.x)
        middle = (self.x[..., 1:] + self.x[..., :-1]) / 2
        width = widths[np.minimum(np.searchsorted(ends, middle), len(widths) - 1)]
        give = 64 / (pi * youngs_modulus * width**4)
        m0, m1 = self.moment[..., :-1], self.moment[..., 1:]
        self.turn = _running(-give * step * (m0 + m1) / 2)
        self.sag = _running(self.turn[..., :-1] * step - give * step**2 * (2 * m0 + m1) / 6)

    def of(
        self, places: NDArray[np.float64], bearings: tuple[float, float]
    ) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
        low, high = (self._at(self.sag, np.full((*places.shape[:-1], 1), place)) for place in bearings)
        lean = (high - low) / (bearings[1] - bearings[0])
        line = low + lean * (places - bearings[0])
        return (
            self._at(self.moment, places),
            self._at(self.turn, places) - lean,
            self._at(self.sag, places) - line,
        )

    def _at(self, values: NDArray[np.float64], places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Values at places that are breaks, so that nothing is interpolated."""
        index = np.sum(self.x[..., None, :] < places[..., :, None], axis=-1)
        return np.take_along_axis(values, index, axis=-1)


def _running(values: NDArray[np.float64]) -> NDArray[np.float64]:
    return np.concatenate([np.zeros((*values.shape[:-1], 1)), np.cumsum(values, axis=-1)], axis=-1)
