"""Simulated sound of a spool that coasts to rest: ticks once a turn, a bearing with a known damage or none.

The same knocks as `tests.knocking` has them, laid by angle instead of by time (the model's sources are named
there). Constant and viscous drag after `mechanics.coastdown`.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import signal

from spoolwright.bench.recording import Recording
from spoolwright.mechanics import coastdown
from spoolwright.mechanics.rolling import defect_frequencies

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Coast:
    kind: str
    first: float = 260.0
    constant: float = 12.0
    viscous: float = 0.05
    seconds: float = 8.0
    balls: int = 7
    ball: float = 1.588e-3
    pitch: float = 6.175e-3
    clear: float = 0.3
    ticks: float = 8.0
    rate: float = 16000.0
    seed: int = 1


def turns(coast: Coast, time: Array) -> Array:
    return np.asarray(coastdown.angle(time, coast.first, 1.0, coast.constant, coast.viscous, 0.0)) / (
        2 * np.pi
    )


def recording(coast: Coast) -> Recording:
    """Half a second before the coast, then the coast."""
    rng = np.random.default_rng(coast.seed)
    time = np.arange(int(coast.seconds * coast.rate)) / coast.rate
    turned = turns(coast, time)
    speed = np.gradient(turned, time) * 2 * np.pi / coast.first
    low = signal.sosfilt(signal.butter(2, 900.0, fs=coast.rate, output="sos"), rng.normal(size=len(time)))
    own = low / low.std() * speed * (1 + 0.2 * np.cos(2 * np.pi * turned)) + 0.02 * rng.normal(size=len(time))
    sound = own.copy()
    if coast.kind != "sound":
        knocks = _rung(_knocks(coast, time, turned, rng), coast.rate, rng.uniform(2500.0, 5500.0))
        sound += knocks * speed * np.sqrt(coast.clear * own.var() / (knocks * speed).var())
    ticks = np.zeros(len(time))
    at = np.searchsorted(turned, np.arange(1, int(turned[-1]) + 1) + rng.normal(0, 0.002, int(turned[-1])))
    ticks[np.minimum(at, len(time) - 1)] = 1.0
    sound += coast.ticks * _rung(ticks, coast.rate, 3200.0) * (0.3 + 0.7 * speed)
    before = 0.02 * rng.normal(size=int(coast.rate / 2))
    sound = np.concatenate([before, sound])
    return Recording((0.5 * sound / np.abs(sound).max()).astype(np.float32), coast.rate)


def _knocks(coast: Coast, time: Array, turned: Array, rng: np.random.Generator) -> Array:
    orders = defect_frequencies(60.0, coast.balls, coast.ball, coast.pitch)
    order = float(orders[coast.kind]) * (1 + rng.uniform(-0.008, 0.008))
    angle = np.cumsum(rng.normal(1.0, 0.01, int(turned[-1] * order))) / order
    carried = {"inner": 1.0, "ball": float(orders["cage"])}.get(coast.kind, 0.0)
    load = 1 + (0.9 if carried else 0.0) * np.cos(2 * np.pi * carried * angle + 1)
    out = np.zeros(len(time))
    place = np.searchsorted(turned, angle)
    keep = place < len(time)
    np.add.at(out, place[keep], (load * rng.normal(1.0, 0.1, len(angle)))[keep])
    return out


def _rung(knocks: Array, rate: float, tone: float) -> Array:
    time = np.arange(int(0.01 * rate)) / rate
    ring = np.exp(-time * 0.06 * 2 * np.pi * tone) * np.sin(2 * np.pi * tone * time)
    return np.asarray(signal.fftconvolve(knocks, ring)[: len(knocks)], dtype=np.float64)
