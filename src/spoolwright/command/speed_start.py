"""What a start costs: time and memory of a fresh program, each measured in a process of its own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

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
    """From nothing to each of these: the interpreter alone, NumPy, the mechanics, one cast, many casts.

    What Python and the cast's compiler make of their sources is kept in a folder of its own, where the first
    start finds nothing and the later ones find all.
    """
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        kept = {"PYTHONPYCACHEPREFIX": folder, "NUMBA_CACHE_DIR": str(Path(folder) / "compiled")}
        first = _once(ONE_CAST, kept)
        again = {
            "nothing": _best("", kept),
            "numpy": _best("import numpy", kept),
            "mechanics": _best("import spoolwright.mechanics", kept),
            "one cast": _best(ONE_CAST, kept),
        }
        many = _once(MANY_CASTS.format(count=most), kept)
    return {**again, "one cast, compiled first": first, "many casts": many}


def _best(code: str, kept: dict[str, str]) -> Start:
    """The quickest of some runs, the first of which is not counted."""
    return min([_once(code, kept) for _ in range(RUNS + 1)][1:], key=lambda start: start.wall)


def _once(code: str, kept: dict[str, str]) -> Start:
    words = [sys.executable, "-c", f"{BEFORE}\n{code}\n{AFTER}"]
    own = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    done = subprocess.run(words, env=own | kept, capture_output=True, text=True, check=True)
    wall, processor, memory = json.loads(done.stdout)
    return Start(float(wall), float(processor), int(memory))
