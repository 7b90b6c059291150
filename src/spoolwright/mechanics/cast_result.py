"""What comes out of a cast: numbers for many, or one against time. Each field by name or by key."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields
from typing import Any

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


class _Named(Mapping[str, Any]):
    """A dataclass whose fields can be had as `result.distance` and as `result["distance"]`."""

    def __getitem__(self, name: str) -> Any:
        if name not in self._names():
            raise KeyError(f"{name}: there is {', '.join(self._names())}")
        return getattr(self, name)

    def __iter__(self) -> Iterator[str]:
        return iter(self._names())

    def __len__(self) -> int:
        return len(self._names())

    @classmethod
    def _names(cls) -> tuple[str, ...]:
        return tuple(field.name for field in fields(cls))  # type: ignore[arg-type]


@dataclass(frozen=True, eq=False)
class Casts(_Named):
    """Results of `cast.simulate`, each of the broadcast shape of its arguments; SI.

    Energies are seen from the ground: what the air took is below zero where a following wind pushed. All
    losses together are start_energy - end_energy.
    """

    distance: Any  # [m] along the water, to where the cast ended
    flight_time: Any  # [s]
    arc: Any  # [m] length of the path flown
    line_out: Any  # [m] that has left the spool: arc and slack
    peak_spool_speed: Any  # [rad/s]
    peak_slack: Any  # [m]
    brake_energy: Any  # [J] magnets and blocks
    bearing_energy: Any  # [J]
    windage_energy: Any  # [J]
    thumb_energy: Any  # [J]
    payload_air_energy: Any  # [J]
    line_air_energy: Any  # [J]
    landed: Any  # whether it came down on the water before the line was at its end
    guide_energy: Any  # [J] level wind, or the lip of a fixed spool
    slack_energy: Any  # [J] lost by line between the spool and the flight
    join_energy: Any  # [J] lost where slack was used up and the spool jerked along
    start_energy: Any  # [J] payload, spool and the line on it at release; height counts from the water
    end_energy: Any  # [J] payload, line in the air and spool at the end

    @classmethod
    def of(cls, results: Array, shape: tuple[int, ...], kernel: Any) -> Casts:
        """From the kernel's rows; a single cast gives single numbers."""
        columns = {
            "distance": kernel.DISTANCE,
            "flight_time": kernel.TIME,
            "arc": kernel.ARC,
            "line_out": kernel.OUT,
            "peak_spool_speed": kernel.PEAK_SPIN,
            "peak_slack": kernel.PEAK_SLACK,
            "brake_energy": kernel.E_BRAKE,
            "bearing_energy": kernel.E_BEARING,
            "windage_energy": kernel.E_WINDAGE,
            "thumb_energy": kernel.E_THUMB,
            "payload_air_energy": kernel.E_PAYLOAD,
            "line_air_energy": kernel.E_LINE,
            "guide_energy": kernel.E_GUIDE,
            "slack_energy": kernel.E_SLACK,
            "join_energy": kernel.E_JOIN,
            "start_energy": kernel.E_START,
            "end_energy": kernel.E_END,
        }
        landed = (results[:, kernel.STATUS] == kernel.LANDED).reshape(shape)[()]
        found = {name: results[:, at].reshape(shape)[()] for name, at in columns.items()}
        return cls(landed=landed, **found)


@dataclass(frozen=True, eq=False)
class Trace(_Named):
    """One cast against time, from `cast.trace`: arrays of one length, SI."""

    time: Array  # [s]
    x: Array  # [m] along the water
    y: Array  # [m] above the water
    speed: Array  # [m/s] of the payload
    spool_speed: Array  # [rad/s]
    line_speed: Array  # [m/s] at which line leaves the spool
    arc: Array  # [m]
    line_out: Array  # [m]
    slack: Array  # [m]
    tension: Array  # [N] at the spool
    radius: Array  # [m] of the line on the spool
    summary: Casts

    @classmethod
    def of(cls, lines: Array, case: Array, summary: Casts, kernel: Any) -> Trace:
        """From the lines that the kernel noted."""
        time, x, y, vx, vy, arc, spin, slack, tension = lines.T.copy()
        speed = np.hypot(vx, vy)
        squared = np.maximum(case[kernel.TOP] - case[kernel.FALL] * (arc + slack), case[kernel.FLOOR])
        radius = np.sqrt(squared)
        leaving = speed.copy() if case[kernel.FIXED] > 0 else radius * spin
        return cls(time, x, y, speed, spin, leaving, arc, arc + slack, slack, tension, radius, summary)
