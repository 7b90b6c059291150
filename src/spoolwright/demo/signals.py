"""Pull traces and tick recordings made from known physics plus noise; each carries the truth behind it."""

from __future__ import annotations

import io
import wave
from dataclasses import dataclass, field
from math import pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import coastdown

Samples = NDArray[np.float64]

KILOGRAM = 9.80665
"""Newtons in the pull of one kilogram: standard gravity, by definition."""

_FINE = 5000.0
"""Samples a second at which the truth is taken."""


@dataclass(frozen=True)
class PullShape:
    """One pull as the drag gives it, in N and s, and the gauge that watches.

    The line comes tight over `ramp`, breaks away at running x start_up_ratio, settles within `settling` and
    runs for `slip` seconds with stick-slip (a sawtooth), one ripple a spool turn and a slow drift (fraction
    of the running pull over the whole slip). `accuracy` is the largest error of the gauge's scale.
    """

    running: float = 25.0
    start_up_ratio: float = 1.25
    stick_slip: float = 0.03
    stick_slip_rate: float = 6.0
    turn_ripple: float = 0.02
    turn_time: float = 0.7
    drift: float = 0.02
    ramp: float = 0.6
    settling: float = 0.06
    slip: float = 4.0
    rate: float = 100.0
    noise: float = 0.05
    accuracy: float = 0.005
    resolution: float = 0.01 * KILOGRAM


@dataclass(frozen=True)
class PullTruth:
    """What the drag did, before the gauge: the five results, and when it broke away and was let go."""

    start_up: float
    running: float
    start_up_ratio: float
    judder: float
    drift: float
    breaks_away: float
    let_go: float


@dataclass(frozen=True, eq=False)
class PullSignal:
    """What the gauge wrote down (s, N), and the truth behind it."""

    time: Samples
    force: Samples
    rate: float
    truth: PullTruth

    def to_csv(self, style: str = "plain") -> bytes:
        """The file as one of several gauges would write it; `PULL_STYLES` names them."""
        return _PULL_WRITERS[style](self)


def pull_trace(shape: PullShape | None = None, *, seed: int = 1) -> PullSignal:
    """A pull of this shape as a gauge sees it: scale error, noise, display steps."""
    s = shape or PullShape()
    rng = np.random.default_rng(seed)
    before, after = rng.uniform(0.6, 1.2), rng.uniform(0.3, 0.7)
    phases = rng.uniform(0.0, 1.0, 2)
    breaks = before + s.ramp
    time = np.arange(0.0, breaks + s.slip + 0.15 + after, 1.0 / s.rate) + rng.uniform(0.0, 1.0 / s.rate)
    clean = _pull(time, s, before, phases)
    gain = 1.0 + rng.uniform(-s.accuracy, s.accuracy)
    seen = clean * gain + rng.normal(0.0, s.noise, len(time))
    if s.resolution > 0:
        seen = np.round(seen / s.resolution) * s.resolution
    return PullSignal(time - time[0], seen, s.rate, _pull_truth(s, before, phases, float(time[0])))


def _pull(time: Samples, s: PullShape, before: float, phases: Samples) -> Samples:
    breaks = before + s.ramp
    since = time - breaks
    top = s.running * s.start_up_ratio
    tight = top * np.clip((time - before) / s.ramp, 0.0, 1.0) ** 1.3
    grip = np.clip(since / 0.2, 0.0, 1.0)
    saw = 2.0 * np.mod(since * s.stick_slip_rate + phases[0], 1.0) - 1.0
    turn = np.sin(2 * pi * (since / s.turn_time + phases[1]))
    level = s.running * (1.0 + s.drift * (since / s.slip - 0.5))
    ripple = s.running * grip * (s.stick_slip * saw + s.turn_ripple * turn)
    start = (top - s.running) * np.exp(-np.maximum(since, 0.0) / s.settling)
    start += 0.5 * s.running * s.drift * np.maximum(1.0 - since / 0.3, 0.0)
    slipping = level + ripple + start
    release = np.clip(1.0 - (since - s.slip) / 0.12, 0.0, 1.0)
    return np.where(since < 0, tight, slipping * release)


def _pull_truth(s: PullShape, before: float, phases: Samples, first: float) -> PullTruth:
    breaks = before + s.ramp
    start = _pull(breaks + np.arange(0.0, 0.3, 1.0 / _FINE), s, before, phases)
    run = _pull(breaks + np.arange(0.3, s.slip, 1.0 / _FINE), s, before, phases)
    low, high = np.percentile(run, (5.0, 95.0))
    return PullTruth(
        start_up=float(start.max()),
        running=float(run.mean()),
        start_up_ratio=float(start.max() / run.mean()),
        judder=float((high - low) / run.mean()),
        drift=s.drift * (1.0 - 0.3 / s.slip) * s.running / float(run.mean()),
        breaks_away=breaks - first,
        let_go=breaks + s.slip - first,
    )


def _plain(signal: PullSignal) -> bytes:
    rows = [f"{t:.4f},{f:.4f}" for t, f in zip(signal.time, signal.force, strict=True)]
    return "\n".join(["time_s,force_n", *rows, ""]).encode()


def _semicolon(signal: PullSignal) -> bytes:
    rows = [f"{t:.3f};{f / KILOGRAM:.3f}".replace(".", ",") for t, f in _pairs(signal)]
    return ("\r\n".join(["Messung für die Bremse", "Zeit [s];Zugkraft [kgf]", *rows, ""])).encode("cp1252")


def _one_column(signal: PullSignal) -> bytes:
    above = ["Gauge log", f"Sample rate: {signal.rate:g} Hz", "Unit: kg", "", "Load (kg)"]
    return "\n".join([*above, *(f"{f / KILOGRAM:.3f}" for f in signal.force), ""]).encode("utf-8-sig")


def _clock(signal: PullSignal) -> bytes:
    rows = [f"14:{int(t // 60):02d}:{t % 60:06.3f}\t{f / 4.4482216152605:.3f}" for t, f in _pairs(signal)]
    return "\n".join(["Clock time\tPull lbf", *rows, ""]).encode("utf-16")


def _quoted(signal: PullSignal) -> bytes:
    rows = [f'"{t * 1000:.1f}","{i}","{f:.4f}"' for i, (t, f) in enumerate(_pairs(signal))]
    return "\r\n".join(["", "时间,位移,力", "(ms),(mm),(N)", *rows, ""]).encode("gb18030")


def _pairs(signal: PullSignal) -> list[tuple[float, float]]:
    return list(zip(signal.time.tolist(), signal.force.tolist(), strict=True))


_PULL_WRITERS = {
    "plain": _plain,
    "semicolon": _semicolon,
    "one column": _one_column,
    "clock": _clock,
    "quoted": _quoted,
}
PULL_STYLES = tuple(_PULL_WRITERS)


@dataclass(frozen=True)
class SpinShape:
    """One coast-down of a spool (rad/s, drag per unit inertia) and how its ticks were caught.

    `jitter` is the scatter of a tick as a fraction of a turn, `clock` its scatter in s; `missed` and
    `doubled` are the shares of turns whose tick is not heard, or heard twice. `seconds` ends it early.
    """

    initial_speed: float = 200.0
    constant: float = 4.0
    viscous: float = 0.03
    quadratic: float = 2e-4
    seconds: float | None = None
    jitter: float = 0.002
    clock: float = 1e-4
    missed: float = 0.02
    doubled: float = 0.02
    hiss: float = 0.02
    hum: float = 0.05
    rate: int = 22050


@dataclass(frozen=True)
class SpinTruth:
    """The coast-down itself: first speed, drag per unit inertia, seconds to rest, faults, when it began."""

    initial_speed: float
    constant: float
    viscous: float
    quadratic: float
    stop_time: float
    missed: int
    doubled: int
    lead: float

    def speed_at(self, time: float) -> float:
        """Speed [rad/s] at a time [s] of the recording."""
        drags = (self.constant, self.viscous, self.quadratic)
        return float(coastdown.speed(max(0.0, time - self.lead), self.initial_speed, 1.0, *drags))


@dataclass(frozen=True, eq=False)
class SpinSignal:
    """Ticks as they were caught (s), how the spool is heard, and the truth behind it."""

    ticks: Samples
    loudness: Samples
    length: float
    shape: SpinShape
    truth: SpinTruth
    seed: int = field(repr=False)

    def to_csv(self, style: str = "plain") -> bytes:
        """Tick times as one of `SPIN_STYLES`."""
        if style == "plain":
            return "\n".join(["tick_time_s", *(f"{t:.6f}" for t in self.ticks), ""]).encode()
        if style == "milliseconds":
            rows = [f"{i};{1000 * t:.3f}".replace(".", ",") for i, t in enumerate(self.ticks)]
            return "\r\n".join(["Tick;Zeit (ms)", *rows, ""]).encode("cp1252")
        return "\n".join([*(f"{t:.6f}" for t in self.ticks), ""]).encode()

    def samples(self) -> Samples:
        """The sound: one click a tick over hiss and mains hum, between -1 and 1."""
        rng = np.random.default_rng(self.seed + 1)
        n = int(self.length * self.shape.rate)
        sound = rng.normal(0.0, self.shape.hiss, n)
        sound += self.shape.hum * np.sin(2 * pi * 50.0 * np.arange(n) / self.shape.rate)
        for at, loud in zip(self.ticks, self.loudness, strict=True):
            _add_click(sound, at * self.shape.rate, loud, self.shape.rate)
        return sound / max(1.0, float(np.abs(sound).max()) * 1.02)

    def to_wav(self) -> bytes:
        """The sound as a 16-bit mono WAV."""
        out = io.BytesIO()
        with wave.open(out, "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(self.shape.rate)
            file.writeframes((self.samples() * 32767).astype("<i2").tobytes())
        return out.getvalue()


SPIN_STYLES = ("plain", "milliseconds", "bare")


def spin_recording(shape: SpinShape | None = None, *, seed: int = 1) -> SpinSignal:
    """A coast-down of this shape: one tick a turn, some missed, some doubled, none exactly in place."""
    s = shape or SpinShape()
    rng = np.random.default_rng(seed)
    stop = float(coastdown.stop_time(s.initial_speed, 1.0, s.constant, s.viscous, s.quadratic))
    lead = rng.uniform(0.2, 0.6)
    true = _turn_times(s, stop if s.seconds is None else min(stop, s.seconds))
    speed = np.asarray(coastdown.speed(true, s.initial_speed, 1.0, s.constant, s.viscous, s.quadratic))
    shake = rng.normal(0.0, s.jitter, len(true)) * 2 * pi / np.maximum(speed, s.initial_speed / 50)
    caught = true + shake + rng.normal(0.0, s.clock, len(true))
    keep = rng.random(len(true)) >= s.missed
    keep[0] = True
    again = keep & (rng.random(len(true)) < s.doubled)
    extra = caught[again] + rng.uniform(0.04, 0.3, int(again.sum())) * 2 * pi / speed[again]
    loud = 0.25 + 0.5 * speed / s.initial_speed
    ticks = np.concatenate((caught[keep], extra))
    order = np.argsort(ticks)
    heard = np.concatenate((loud[keep] * rng.uniform(0.7, 1.3, int(keep.sum())), 0.5 * loud[again]))
    drags = (s.constant, s.viscous, s.quadratic)
    truth = SpinTruth(s.initial_speed, *drags, stop, int((~keep).sum()), int(again.sum()), lead)
    ticks = ticks[order] + lead
    return SpinSignal(ticks, heard[order], float(ticks[-1]) + 0.5, s, truth, seed)


def _turn_times(s: SpinShape, until: float) -> Samples:
    drags = (s.constant, s.viscous, s.quadratic)
    turns = int(float(coastdown.angle(until, s.initial_speed, 1.0, *drags)) / (2 * pi))
    at = coastdown.time_at_angle(2 * pi * np.arange(turns + 1), s.initial_speed, 1.0, *drags)
    return np.asarray(at, dtype=np.float64)


def _add_click(sound: Samples, at: float, loud: float, rate: int) -> None:
    """A tick of metal: 3 kHz dying away within about a millisecond, placed between samples where it falls."""
    first = int(np.ceil(at))
    since = (np.arange(first, min(first + int(0.008 * rate), len(sound))) - at) / rate
    sound[first : first + len(since)] += (
        loud * np.exp(-since / 0.0012) * np.sin(2 * pi * 3000.0 * since + 0.6)
    )
