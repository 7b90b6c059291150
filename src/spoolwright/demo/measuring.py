"""Takes readings as the bench takes them: a file is made, dropped, and read by the bench's own readers."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from spoolwright.bench import pull_trace, recording, spin_down, ticks, typed
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_reading import PullReading
from spoolwright.bench.trace import PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.demo.nature import Nature
from spoolwright.demo.signals import KILOGRAM, PullShape, SpinShape, spin_recording
from spoolwright.demo.signals import pull_trace as pulled
from spoolwright.mechanics import coastdown
from spoolwright.shop.acts.take_reading import Value

GAUGE = Gauge(accuracy_of_reading=0.005, resolution=0.01 * KILOGRAM)
"""The load cell of the demonstration: half a per cent of what it shows, in steps of 10 g."""

INERTIA_SPREAD = 0.05
SOUND_RATE = 11025
SAME = 1e-3
TRIES = 6


@dataclass(frozen=True)
class Dropped:
    """A file as somebody would drop it, its name, and what the bench reads in it."""

    name: str
    data: bytes
    read: Any
    trace: Any = None


def pull(nature: Nature, seed: int, style: str = "semicolon", name: str = "pull.csv") -> Dropped:
    """One pull at the setting of the reel's nature."""
    data = pulled(_pull_shape(nature), seed=seed).to_csv(style)
    trace, read = _read_pull(data, name)
    return Dropped(name, data, read, trace)


def pull_that_reads(nature: Nature, seed: int, style: str = "semicolon", name: str = "pull.csv") -> Dropped:
    """A pull whose file is read as the numbers of its nature, although noise and the gauge stand between.

    For the stories whose numbers are told: of all reels that could have given such a reading, the one that
    did is looked for.
    """
    meant, wanted = nature, (nature.running, nature.ratio)
    for _ in range(TRIES):
        found = pull(meant, seed, style, name)
        off = (found.read.running.value / wanted[0], found.read.start_up_ratio.value / wanted[1])
        if max(abs(share - 1) for share in off) < SAME:
            break
        meant = replace(meant, running=meant.running / off[0], ratio=meant.ratio / off[1])
    return found


def spin(nature: Nature, seed: int, inertia: float | None, name: str = "spin.wav") -> Dropped:
    """One spin of the free spool: a recording where the name ends in wav, else a list of tick times."""
    signal = spin_recording(_spin_shape(nature), seed=seed)
    heard = name.endswith(".wav")
    data = signal.to_wav() if heard else signal.to_csv("milliseconds")
    times = ticks.find(recording.read_wav(data, name=name)) if heard else ticks.read_csv(data, name=name)
    turning = None if inertia is None else Measured(inertia, INERTIA_SPREAD * inertia, "inertia")
    return Dropped(name, data, spin_down.fit(ticks.mend(times), turning))


def _read_pull(data: bytes, name: str) -> tuple[PullTrace, PullReading]:
    trace = pull_trace.read(data, name=name)
    return trace, pull_trace.analyse(trace, GAUGE)


def _pull_shape(nature: Nature) -> PullShape:
    return PullShape(
        running=nature.running,
        start_up_ratio=nature.ratio,
        stick_slip=0.5 * nature.judder,
        turn_ripple=min(0.02, 0.2 * nature.judder),
        slip=3.2,
        rate=50.0,
        noise=0.03,
    )


def _spin_shape(nature: Nature) -> SpinShape:
    """Dry friction, oil and air in the shares that a light spool has, so that it stops when it should."""
    first = nature.flick
    drags = (0.55, 0.30 / first, 0.15 / first**2)
    slowing = float(coastdown.stop_time(first, 1.0, *drags)) / nature.spins
    constant, viscous, quadratic = (slowing * drag for drag in drags)
    return SpinShape(first, constant, viscous, quadratic, rate=SOUND_RATE)


def values_of_typed(kind: str, text: str) -> list[Value]:
    """What somebody types: each try, and the mean of them."""
    read = typed.read(kind, text)
    dimension = read.measured.dimension
    tries = list(enumerate(zip(read.tries, text.split(";"), strict=True), 1)) if len(read.tries) > 1 else []
    single = [Value(kind, value, dimension, None, said.strip(), n) for n, (value, said) in tries]
    return [Value(kind, read.measured.value, dimension, read.measured.uncertainty, text), *single]
