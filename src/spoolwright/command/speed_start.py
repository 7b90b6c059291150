"""What a start costs: time and memory of a fresh program, each measured in a process of its own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from dataclasses import dataclass

RUNS = 5
BEFORE = "import json, sys, time; began = time.perf_counter(), time.process_time()"
AFTER = """
took = [time.perf_counter() - began[0], time.process_time() - began[1]]
most = 0
try:
    told = [line.split() for line in open("/proc/self/status")]
    most = next(int(words[1]) * 1024 for words in told if words[0] == "VmHWM:")
except OSError:
    if sys.platform == "darwin":
        import resource
        most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
print(json.dumps([*took, most]))
"""
ONE_CAST = """
from spoolwright.mechanics import cast
cast.simulate(payload_mass=0.1, payload_drag_area=1e-4, release_speed=40, release_angle=0.7,
    spool_inertia=1e-5, full_radius=0.02, arbor_radius=0.012, spool_width=0.04, packing=0.7,
    line_diameter=0.3e-3, line_density=1140, line_length=300)
"""
MANY_CASTS = """
from spoolwright.command.some_casts import some_casts
from spoolwright.mechanics import cast
cast.simulate(**some_casts({count}, 1))
"""


@dataclass(frozen=True)
class Start:
    """Seconds on the wall, seconds of the processor, and the most memory [bytes, 0 where it is not told]."""

    wall: float
    processor: float
    memory: int


def starts(most: int) -> dict[str, Start]:
    """From nothing to each of these: the interpreter alone, NumPy, the mechanics, one cast, many casts."""
    best = {
        "nothing": _best("", RUNS),
        "numpy": _best("import numpy", RUNS),
        "mechanics": _best("import spoolwright.mechanics", RUNS),
        "one cast": _best(ONE_CAST, RUNS),
        "many casts": _best(MANY_CASTS.format(count=most), 1),
    }
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        best["one cast, compiled first"] = _once(ONE_CAST, {"NUMBA_CACHE_DIR": folder})
    return best


def _best(code: str, runs: int) -> Start:
    """The quickest of some runs; the first of them, which fetches from the disk, is not counted where there
    are more."""
    took = [_once(code, {}) for _ in range(runs + 1 if runs > 1 else 1)]
    return min(took[1:] or took, key=lambda start: start.wall)


def _once(code: str, more: dict[str, str]) -> Start:
    words = [sys.executable, "-c", f"{BEFORE}\n{code}\n{AFTER}"]
    done = subprocess.run(words, env={**os.environ, **more}, capture_output=True, text=True, check=True)
    wall, processor, memory = json.loads(done.stdout)
    return Start(float(wall), float(processor), int(memory))
