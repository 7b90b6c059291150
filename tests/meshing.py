"""Simulated sound of gears turned by hand or motor, a chipped tooth on one wheel or on none.

Mesh tone with multiples, the hand's unevenness, and a knock that rings each time the chipped tooth meshes
(after McFadden, Detecting fatigue cracks in gears by amplitude and phase demodulation, 1986, from memory).
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import signal

from spoolwright.bench.recording import Recording

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Mesh:
    kind: str
    main: int = 98
    pinion: int = 17
    idler: int = 0
    turns_a_second: float = 1.8
    seconds: float = 12.0
    uneven: float = 0.03
    drift: float = 0.05
    clear: float = 0.3
    tone: float = 0.6
    rate: float = 12000.0
    seed: int = 1


def recording(mesh: Mesh) -> Recording:
    """`clear` is the power of the knocks over the noise's, `tone` the mesh's amplitude over its root."""
    rng = np.random.default_rng(mesh.seed)
    time = np.arange(int(mesh.seconds * mesh.rate)) / mesh.rate
    teeth = teeth_at(mesh, time)
    handle = teeth / mesh.main
    low = signal.sosfilt(signal.butter(1, 1500.0, fs=mesh.rate, output="sos"), rng.normal(size=len(time)))
    noise = low / low.std() * (1 + 0.25 * np.cos(2 * np.pi * handle + 1))
    tone = sum(mesh.tone / k * np.cos(2 * np.pi * k * teeth + k) for k in (1, 2, 3))
    sound = noise + tone * (1 + 0.2 * np.cos(2 * np.pi * handle))
    wheel = {"main": mesh.main, "pinion": mesh.pinion, "idler": mesh.idler}.get(mesh.kind)
    if wheel:
        at = np.searchsorted(teeth, np.arange(0.37, teeth[-1], wheel) + rng.uniform(3, 9))
        knocks = np.zeros(len(time))
        kept = at[at < len(time)]
        knocks[kept] = rng.normal(1.0, 0.2, len(kept))
        ring = np.exp(-1100 * time[:120]) * np.sin(2 * np.pi * rng.uniform(2200, 4500) * time[:120])
        rung = signal.fftconvolve(knocks, ring)[: len(time)]
        sound = sound + rung * np.sqrt(mesh.clear * noise.var() / rung.var())
    return Recording((0.4 * sound / np.abs(sound).max()).astype(np.float32), mesh.rate)


def teeth_at(mesh: Mesh, time: Array) -> Array:
    """Teeth that have passed: an even turning, the hand's swing once a turn, a slow drift."""
    even = 2 * np.pi * mesh.turns_a_second * time
    swing = mesh.uneven * (1 - np.cos(even)) / (2 * np.pi)
    slow = 2 * np.pi * time / mesh.seconds
    drift = mesh.drift * mesh.turns_a_second * mesh.seconds * (1 - np.cos(slow)) / (2 * np.pi)
    return np.asarray(mesh.main * (mesh.turns_a_second * time + swing + drift))
