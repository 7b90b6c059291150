"""Casts laid out for the kernel: arguments checked, and what does not change in flight worked out once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import inf, pi
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments

Array = NDArray[np.float64]

VARIANTS = ("multiplier", "ideal thumb", "fixed spool")
COARSEST, FINEST = 1e-2, 1e-13
ABOVE_ZERO = (
    "payload_mass",
    "release_speed",
    "full_radius",
    "arbor_radius",
    "spool_width",
    "line_length",
)
ANY_SIGN = ("wind",)
BETWEEN = {"release_angle": (-pi / 2, pi / 2), "rtol": (FINEST, COARSEST)}


class Cases(NamedTuple):
    """Many casts: the columns of the kernel by name, each of one element or of `count`, and their shape."""

    columns: Mapping[str, Array]
    shape: tuple[int, ...]
    size: int

    @classmethod
    def of(cls, given: Mapping[str, Any], variant: str) -> Cases:
        """Lay the named arguments of a cast out, whatever shapes they have, or refuse one by its name."""
        arguments.one_of(VARIANTS, variant=variant)
        known = {name: _as_numbers(name, value) for name, value in given.items()}
        shape = _shape(known)
        _check(known)
        size = int(np.prod(shape))
        flat = {
            name: column.reshape(1) if column.size == 1 else np.broadcast_to(column, shape).reshape(size)
            for name, column in _columns(known, variant).items()
        }
        return cls(flat, shape, size)

    def blocks(self, kernel: Any, rows: int) -> Iterator[tuple[slice, Array]]:
        """The table in pieces of so many rows, so that a million casts need no more room than a thousand."""
        for start in range(0, self.size, rows):
            piece = slice(start, min(start + rows, self.size))
            block = np.empty((piece.stop - start, kernel.COLUMNS))
            for name, column in self.columns.items():
                block[:, getattr(kernel, name)] = column if column.size == 1 else column[piece]
            yield piece, block


def _as_numbers(name: str, value: Any) -> Array:
    try:
        return np.asarray(value, dtype=np.float64)
    except (TypeError, ValueError):
        raise ValueError(f"{name} must be a number or an array of numbers; came {value!r}") from None


def _shape(known: Mapping[str, Array]) -> tuple[int, ...]:
    """The one shape that all arguments have together."""
    shapes = {name: value.shape for name, value in known.items() if value.shape}
    shape: tuple[int, ...] = ()
    for name, own in shapes.items():
        try:
            shape = shape if own == shape else np.broadcast_shapes(shape, own)
        except ValueError:
            raise ValueError(
                f"{name} must be a number or of a shape that fits the others, {shape}; came {own}"
            ) from None
    return shape


def _check(known: Mapping[str, Array]) -> None:
    for name, value in known.items():
        if name in BETWEEN:
            low, high = BETWEEN[name]
            arguments.between(low, high, **{name: value})
        elif name in ABOVE_ZERO:
            arguments.positive(**{name: value})
        elif name in ANY_SIGN:
            arguments.finite(**{name: value})
        elif name == "packing":
            arguments.above_up_to(0.0, 1.0, packing=value)
        elif name == "slack_limit":
            arguments.between(0.0, inf, slack_limit=value)
        else:
            arguments.not_negative(**{name: value})
    arguments.less("arbor_radius", known["arbor_radius"], "full_radius", known["full_radius"])


def _columns(a: Mapping[str, Array], variant: str) -> dict[str, Array]:
    """What the kernel works with: forces per speed squared, line per metre, the law of the radius."""
    area_per_metre = a["line_diameter"] ** 2 / (4 * a["packing"] * a["spool_width"])
    top, arbor = a["full_radius"] ** 2, a["arbor_radius"] ** 2
    press = a["thumb_force"] * a["full_radius"]
    with np.errstate(divide="ignore"):
        fits = (top - arbor) / area_per_metre
    half_air = 0.5 * a["air_density"]
    return {
        "MASS": a["payload_mass"],
        "EASE": 1 / a["payload_mass"],
        "AIR": half_air * a["payload_drag_area"],
        "VX": a["release_speed"] * np.cos(a["release_angle"]),
        "VY": a["release_speed"] * np.sin(a["release_angle"]),
        "HEIGHT": a["release_height"],
        "WIND": a["wind"],
        "SKIN": half_air * a["line_drag"] * pi * a["line_diameter"],
        "LINE": a["line_density"] * pi * a["line_diameter"] ** 2 / 4,
        "FALL": area_per_metre,
        "TOP": top,
        "FLOOR": np.maximum(arbor, top - area_per_metre * a["line_length"]),
        "BULK": 0.5 * a["line_density"] * pi * a["packing"] * a["spool_width"],
        "BARE": a["spool_inertia"],
        "LENGTH": np.minimum(a["line_length"], fits),
        "B_CONST": a["bearing_constant"],
        "B_VISC": a["bearing_viscous"],
        "B_QUAD": a["bearing_quadratic"],
        "WINDAGE": a["windage"],
        "MAGNET": a["brake_magnetic"],
        "BLOCKS": a["brake_centrifugal"],
        "ENGAGE": a["brake_engages"],
        "GUIDE": a["level_wind_torque"],
        "PRESS": press,
        "LIMIT": a["slack_limit"],
        "HOLD": np.asarray(inf) if variant == "ideal thumb" else np.where(a["slack_limit"] > 0, 0.0, press),
        "LIP": a["lip_friction"],
        "RTOL": a["rtol"],
        "FIRST": 0.6 * a["rtol"] ** 0.2,
        "FIXED": np.asarray(float(variant == "fixed spool")),
    }
