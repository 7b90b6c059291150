"""Ticks of a spool, one a turn: heard in a recording, read from a file, and mended into counted turns."""

from __future__ import annotations

from spoolwright.bench.mending import Mended, mend
from spoolwright.bench.tick_file import read_csv
from spoolwright.bench.tick_sound import find

__all__ = ["Mended", "find", "mend", "read_csv"]
