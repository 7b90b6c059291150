"""The envelope of a band beside the analytic signal and the periodogram of `scipy.signal`.

Source: scipy.signal (hilbert, sosfiltfilt, periodogram), opened; the squared envelope as Randall and Antoni,
Mechanical Systems and Signal Processing 25 (2011), define it (from memory).
"""

from math import pi

import numpy as np
import pytest
from scipy import signal

from spoolwright.bench import envelope
from spoolwright.bench.order_tracking import PLACES_A_TURN, by_the_turn

RATE = 8000.0
BAND = (1500.0, 2500.0)


def knocking() -> np.ndarray:
    """Two seconds of noise in which a ringing at 2 kHz comes 107 times a second and swells with the shaft."""
    rng = np.random.default_rng(4)
    time = np.arange(16000) / RATE
    train = np.zeros(16000)
    at = (np.arange(1, 213) * RATE / 107.0).astype(int)
    train[at] = 1 + 0.5 * np.cos(2 * pi * 30.0 * at / RATE)
    ring = np.exp(-400 * time[:160]) * np.sin(2 * pi * 2000.0 * time[:160])
    return np.asarray(signal.fftconvolve(train, ring)[:16000] + 0.05 * rng.normal(size=16000))


def test_the_lines_are_those_of_the_analytic_signal() -> None:
    # Source: scipy.signal.hilbert and periodogram (opened), on the same sound.
    sound = knocking()
    sos = signal.butter(8, BAND, btype="band", fs=RATE, output="sos")
    loud = np.abs(signal.hilbert(signal.sosfiltfilt(sos, sound))) ** 2
    frequency, power = signal.periodogram(loud / loud.mean(), RATE, "hann", scaling="spectrum")
    (ours,) = envelope.spectra([sound], RATE, [BAND], 400.0, 30.0)
    for line in (107.0, 137.0, 77.0, 214.0, 321.0):
        theirs = np.sqrt(2 * power[np.argmin(np.abs(frequency - line))])  # from mean square to amplitude
        # 6 %: their band has soft edges, ours ends at once.
        assert ours.size[round(line / ours.step)] == pytest.approx(theirs, rel=0.06)


def test_loudness_by_the_turn_is_what_interpolation_and_a_steep_filter_give() -> None:
    """Angle sampling done the long way: every sample's angle, straight lines, a filter, then thinning."""
    # Source: scipy.signal.decimate (opened), on the same loudness.
    time = np.arange(60000) / RATE
    turns = 20.0 * time - 0.9 * time**2
    loud = 1 + 0.6 * np.cos(2 * pi * 3.585 * turns) + 0.3 * np.cos(2 * pi * 7.17 * turns + 1)
    ours = by_the_turn(loud, turns, float(turns[-1]))
    fine = np.interp((np.arange(len(ours) * 8) + 0.5) / (8 * PLACES_A_TURN), turns, loud)
    theirs = signal.decimate(fine, 8, ftype="fir")
    middle = slice(200, len(ours) - 200)
    # One per cent: half a place between the two grids.
    assert np.abs(np.fft.rfft(ours[middle])).max() == pytest.approx(
        np.abs(np.fft.rfft(theirs[middle])).max(), rel=0.01
    )
