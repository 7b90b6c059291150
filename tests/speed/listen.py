"""How long a recording takes from the file to the fitted spin-down, and what memory that needs: one table.

Run it by hand, on a machine that does nothing else: `PYTHONPATH=src:. python tests/speed/listen.py`, with
the seconds of another recording if you like. The aim is two seconds for a minute, on one core. Processor time
is that of this process and of the decoder beside it. It asserts nothing, because a busy machine is no fault
of the program.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

MINUTE = 60.0
KINDS = ("wav", "flac", "m4a", "mp3", "ogg", "webm", "mp4", "mov")

_ONE = """
import resource, sys, time
from pathlib import Path
from spoolwright.bench import recording, spin_down, ticks
import scipy.optimize, scipy.signal, scipy.ndimage

def used():
    both = map(resource.getrusage, (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return sum(one.ru_utime + one.ru_stime for one in both)

def most():
    told = Path("/proc/self/status").read_text()
    return int(told.split("VmHWM:")[1].split()[0]) / 1024

path, before, clock, began = Path(sys.argv[1]), most(), time.perf_counter(), used()
sound = recording.read(path, name=path.name)
read = used()
heard = ticks.find(sound)
found = used()
result = spin_down.fit(ticks.mend(heard))
fitted = used()
print(f"{read - began:.2f} {found - read:.2f} {fitted - found:.2f} {fitted - began:.2f} "
      f"{time.perf_counter() - clock:.2f} {before:.0f} {most():.0f} {len(heard)}")
"""


def written(folder: Path, kind: str, seconds: float) -> Path:
    """A coast-down that lasts so long, in stereo."""
    import numpy as np

    from spoolwright.demo.signals import SpinShape, spin_recording
    from tests.encoded import encode

    coast = {"constant": 115.0 / seconds, "viscous": 0.3 / seconds, "quadratic": 1e-5}
    shape = SpinShape(initial_speed=150.0, rate=48_000, seconds=seconds - 1.0, **coast)
    path = folder / f"spin.{kind}"
    path.write_bytes(encode(kind, np.stack([spin_recording(shape, seed=3).samples()] * 2)))
    return path


def main(seconds: float) -> None:
    print(f"{seconds:.0f} s of stereo; processor seconds read, heard, fitted, all; by the clock; memory")  # noqa: T201
    with tempfile.TemporaryDirectory() as folder:
        for kind in KINDS:
            path = written(Path(folder), kind, seconds)
            words = [sys.executable, "-c", _ONE, str(path)]
            said = subprocess.run(
                words, capture_output=True, text=True, check=True, env=dict(os.environ)
            ).stdout
            read, found, fitted, everything, clock, before, most, ticks = said.split()
            print(  # noqa: T201
                f"{kind:5} {path.stat().st_size / 1e6:6.1f} MB   {read} {found} {fitted}   {everything} of "
                f"{2.0 * seconds / MINUTE:.0f} s   {clock} s   {before} to {most} MB   {ticks} ticks"
            )


if __name__ == "__main__":
    main(float(sys.argv[1]) if len(sys.argv) > 1 else MINUTE)
