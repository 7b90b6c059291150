"""How strong the lines beside a mesh are that stand off by the turning of one wheel."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.mesh_track import MeshTrack

_PER_TOOTH = 8
_PAIRS = 5


def ratios(
    samples: NDArray[np.floating], rate: float, track: MeshTrack, wheels: Mapping[str, int]
) -> dict[str, float]:
    """Sidebands of the mesh at each wheel's turning, over the mesh itself.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz], above zero.
    track : MeshTrack
        Teeth [-] over time [s].
    wheels : mapping
        Teeth of each wheel [-].

    Returns
    -------
    dict
        Root of the summed squares of the first five pairs over the mesh's own amplitude [1], a wheel.

    Notes
    -----
    The sound, low-passed, is read at eight places a tooth; then the mesh lies at one and a wheel of z teeth
    at one plus and minus k / z, however the speed drifts.

    Source
    ------
    Randall, A new method of modeling gear faults, Journal of Mechanical Design 104 (1982): a fault of one
    tooth spreads sidebands at its wheel's turning rate about the mesh (from memory).

    Examples
    --------
    >>> time = np.arange(80000) / 8000.0
    >>> teeth = 200.0 * time
    >>> hum = (1 + 0.4 * np.cos(2 * np.pi * teeth / 17)) * np.cos(2 * np.pi * teeth)
    >>> round(ratios(hum, 8000.0, MeshTrack(time, teeth, 200.0, 0.0, 1.0), {"pinion": 17})["pinion"], 1)
    0.3
    """
    from scipy import signal

    cut = min(3.0 * track.rate, 0.45 * rate)
    low = signal.sosfiltfilt(signal.butter(4, cut, fs=rate, output="sos"), np.asarray(samples, np.float64))
    count = int(track.teeth[-1]) * _PER_TOOTH
    seconds = np.interp(np.arange(count) / _PER_TOOTH, track.teeth, track.time)
    even = np.interp(seconds, np.arange(len(low)) / rate, low)
    window = np.hanning(count)
    lines = np.abs(np.fft.rfft(even * window))
    length = count / _PER_TOOTH
    mesh = _line(lines, 1.0, length)
    found = {}
    for name, teeth in wheels.items():
        orders = [1.0 + k / teeth for k in range(-_PAIRS, _PAIRS + 1) if k]
        pairs = [_line(lines, order, length) for order in orders]
        found[name] = float(np.sqrt(np.sum(np.square(pairs))) / max(mesh, 1e-300))
    return found


def _line(lines: NDArray[np.float64], order: float, length: float) -> float:
    """The highest of the places about an order."""
    middle = round(order * length)
    return float(lines[max(0, middle - 1) : middle + 2].max(initial=0.0))
