"""Textbook mechanics of a reel: pure functions of SI floats and arrays, one chapter a file."""

from spoolwright.mechanics import (
    arguments,
    beams,
    brakes,
    clutch,
    coastdown,
    gears,
    heat,
    line,
    lubricant,
    rolling,
    spool,
    springs,
    threads,
    wear,
    winding,
)

__all__ = [
    "arguments",
    "beams",
    "brakes",
    "clutch",
    "coastdown",
    "gears",
    "heat",
    "line",
    "lubricant",
    "rolling",
    "spool",
    "springs",
    "threads",
    "wear",
    "winding",
]
