"""Textbook mechanics of a reel: pure functions of SI floats and arrays, one chapter a file."""

from spoolwright.mechanics import (
    arguments,
    clutch,
    coastdown,
    line,
    lubricant,
    rolling,
    spool,
    springs,
    threads,
)

__all__ = [
    "arguments",
    "clutch",
    "coastdown",
    "line",
    "lubricant",
    "rolling",
    "spool",
    "springs",
    "threads",
]
