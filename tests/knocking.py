"""Simulated noise of ball bearings with a known damage: the truth that the ear has to find again.

After the textbook model (McFadden and Smith, Model for the vibration produced by a single point defect in a
rolling element bearing, Journal of Sound and Vibration 96 (1984); random slip after Randall and Antoni, 2011;
both from memory): knocks at the rate of the damage, each a little early or late, as loud as the load on the
spot, each ringing a resonance, in the noise of a machine.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import signal

from spoolwright.bench.recording import Recording
from spoolwright.mechanics.rolling import defect_frequencies


@dataclass(frozen=True)
class Case:
    kind: str
    rpm: float
    balls: int = 9
    ball: float = 7.94e-3
    pitch: float = 39.04e-3
    clear: float = 1.0
    rate: float = 12000.0
    turns: float = 120.0
    seed: int = 1


def recording(case: Case) -> Recording:
    """Sound of the case; `clear` is the power of the knocks over that of the machine's noise."""
    rng = np.random.default_rng(case.seed)
    count = int(case.turns / (case.rpm / 60) * case.rate)
    time = np.arange(count) / case.rate
    sound = machine(case, time, rng)
    if case.kind != "sound":
        knocks = _ringing(_knocks(case, count, rng), case.rate, rng)
        sound = sound + knocks * np.sqrt(case.clear * sound.var() / knocks.var())
    return Recording((0.2 * sound / np.abs(sound).max()).astype(np.float32), case.rate)


def machine(case: Case, time: NDArray[np.float64], rng: np.random.Generator) -> NDArray[np.float64]:
    """A turning machine: noise that falls with frequency and swells a little once a turn, unbalance, hum."""
    turns = case.rpm / 60
    low = signal.sosfilt(signal.butter(2, 900.0, fs=case.rate, output="sos"), rng.normal(size=len(time)))
    phase = 2 * np.pi * turns * time
    noise = low / low.std() * (1 + 0.3 * np.cos(phase) + 0.15 * np.cos(2 * phase + 1)) + 0.03 * rng.normal(
        size=len(time)
    )
    tones = sum(0.3 / k * np.cos(k * phase + k) for k in (1, 2, 3))
    return noise + tones + 0.2 * np.cos(2 * np.pi * 100 * time)


def _knocks(case: Case, count: int, rng: np.random.Generator) -> NDArray[np.float64]:
    turns = case.rpm / 60
    rates = defect_frequencies(case.rpm, case.balls, case.ball, case.pitch)
    slipped = rates[case.kind] * (1 + rng.uniform(-0.008, 0.008))
    number = int(count / case.rate * slipped)
    steps = rng.normal(1.0, 0.01, number) / slipped
    at = np.cumsum(steps)
    carried = {"inner": turns, "ball": float(rates["cage"]), "outer": 0.0, "cage": 0.0}[case.kind]
    load = 1 + (0.9 if carried else 0.0) * np.cos(2 * np.pi * carried * at + 1)
    out = np.zeros(count)
    place = (at * case.rate).astype(int)
    keep = place < count
    np.add.at(out, place[keep], (load * rng.normal(1.0, 0.1, number))[keep])
    return out


def _ringing(knocks: NDArray[np.float64], rate: float, rng: np.random.Generator) -> NDArray[np.float64]:
    tone = rate * rng.uniform(0.2, 0.38)
    time = np.arange(int(0.01 * rate)) / rate
    ring = np.exp(-time * 0.06 * 2 * np.pi * tone) * np.sin(2 * np.pi * tone * time)
    return np.asarray(signal.fftconvolve(knocks, ring)[: len(knocks)], dtype=np.float64)
