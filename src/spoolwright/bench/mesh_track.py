"""How many teeth have passed at any moment of a recording, from the hum of the meshing gears."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

TOLERANCE = 0.2
"""How far the stated speed may be off, and a hand uneven, as a share: judgement prior."""

_CYCLES, _OVERLAP = 16, 4
_HARMONICS = 3
_CANDIDATES = 81
_STEP = 2
_ROUNDS = 3
_HELD = 0.6
_PASS = 0.05


@dataclass(frozen=True, eq=False)
class MeshTrack:
    """Teeth [-] passed at moments [s]; `clear` is the share of the mesh's own band that is its tone.

    `rate` is the mean rate of the teeth [Hz], `uneven` how far it strays from that, standard deviation as a
    share [1].
    """

    time: Array
    teeth: Array
    rate: float
    uneven: float
    clear: float

    @property
    def is_heard(self) -> bool:
        """Whether the tone stands out enough to be followed; plain noise alone comes to about half."""
        return self.clear > _HELD

    def at(self, time: Array) -> Array:
        """Teeth that have passed at moments [s]."""
        return np.asarray(np.interp(time, self.time, self.teeth), dtype=np.float64)


def follow(samples: NDArray[np.floating], rate: float, expected: float) -> MeshTrack:
    """Follow the tone of the meshing teeth near an expected rate.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).
    rate : float
        Samples a second [Hz], above zero.
    expected : float
        Teeth a second that the stated speed means [Hz], above zero.

    Returns
    -------
    MeshTrack
        Teeth [-] over time [s].

    Notes
    -----
    In frames of sixteen teeth the tone and its next two multiples are looked for within a fifth of the
    expected rate; the way through the frames that is loudest while it bends by a fortieth a step at most is
    taken (dynamic programming), and put right by the phase that the tone keeps against it, three times.

    Source
    ------
    Ridge by dynamic programming, then phase demodulation: Bonnardot, El Badaoui, Randall, Daniere and
    Guillet, Use of the acceleration signal of a gearbox in order to perform angular resampling, Mechanical
    Systems and Signal Processing 19 (2005) (from memory).

    Examples
    --------
    >>> time = np.arange(40000) / 8000.0
    >>> hum = np.sin(2 * np.pi * 205.0 * time) + 0.1 * np.random.default_rng(1).normal(size=time.size)
    >>> found = follow(hum, 8000.0, 200.0)
    >>> round(found.rate, 1), found.is_heard
    (205.0, True)
    """
    sound = np.asarray(samples, dtype=np.float64)
    frame = int(_CYCLES * rate / expected)
    starts = np.arange(0, len(sound) - frame, max(1, frame // _OVERLAP))
    trial = expected * np.linspace(1 - TOLERANCE, 1 + TOLERANCE, _CANDIDATES)
    ridge = trial[_way(_scores(sound, rate, frame, starts, trial))]
    middles = (starts + frame / 2) / rate
    time = np.arange(len(sound)) / rate
    now = np.interp(time, middles, ridge)
    phase = np.cumsum(now) / rate
    clear = 0.0
    for _ in range(_ROUNDS):
        phase, clear = _put_right(sound, rate, expected, phase)
    every = max(1, int(rate / expected / 4))
    teeth = np.maximum.accumulate(phase[::every])
    mean = float(np.polyfit(time[::every], teeth, 1)[0])
    block = max(1, int(_CYCLES / 2 * rate / expected / every))
    speeds = np.diff(teeth[::block]) / block * rate / every
    uneven = float(speeds.std() / mean) if len(speeds) > 1 and mean > 0 else 0.0
    return MeshTrack(time[::every], teeth - teeth[0], mean, uneven, clear)


def _scores(sound: Array, rate: float, frame: int, starts: NDArray[np.int64], trial: Array) -> Array:
    """How loud each trial rate and its multiples are in each frame, over what lies around them."""
    window = np.hanning(frame)
    length = int(2 ** np.ceil(np.log2(4 * frame)))
    step = rate / length
    rows = []
    for start in starts:
        power = np.abs(np.fft.rfft(sound[start : start + frame] * window, length)) ** 2
        row = np.zeros(len(trial))
        for k in range(1, _HARMONICS + 1):
            place = np.minimum(np.rint(k * trial / step).astype(np.int64), len(power) - 1)
            level = np.median(power[place[0] : place[-1] + 1]) + 1e-300
            row += np.minimum(np.log1p(power[place] / level), 6.0) / k
        rows.append(row)
    return np.array(rows)


def _way(scores: Array) -> NDArray[np.int64]:
    """The loudest way through the frames that moves by two places at most from one to the next."""
    best, back = scores[0].copy(), []
    count = scores.shape[1]
    for row in scores[1:]:
        padded = np.pad(best, _STEP, constant_values=-np.inf)
        options = np.array([padded[k : k + count] for k in range(2 * _STEP + 1)])
        chosen = options.argmax(axis=0)
        back.append(chosen - _STEP)
        best = options.max(axis=0) + row
    way = [int(best.argmax())]
    for step in reversed(back):
        way.append(int(way[-1] + step[way[-1]]))
    return np.array(way[::-1], dtype=np.int64)


def _put_right(sound: Array, rate: float, expected: float, phase: Array) -> tuple[Array, float]:
    """The phase with what the tone keeps against it, and the share of the band that is the tone."""
    from scipy import signal

    turned = sound * np.exp(-2j * np.pi * phase)
    narrow = signal.butter(2, _PASS * expected, fs=rate, output="sos")
    wide = signal.butter(2, min(TOLERANCE * expected, 0.45 * rate), fs=rate, output="sos")
    tone = signal.sosfiltfilt(narrow, turned)
    around = signal.sosfiltfilt(wide, turned)
    off = np.unwrap(np.angle(tone)) / (2 * np.pi)
    inner = slice(len(tone) // 10, len(tone) - len(tone) // 10)
    power = float(np.mean(np.abs(around[inner]) ** 2))
    return phase + off, float(np.mean(np.abs(tone[inner]) ** 2)) / max(power, 1e-300)
