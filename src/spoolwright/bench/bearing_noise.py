"""What a bearing's noise at a steady speed says: a ring, a ball, the cage, sound, or cannot tell."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import log, pi

import numpy as np

from spoolwright.bench import bangs, bearing_verdict, comb, envelope, loudness
from spoolwright.bench.bearing_combs import FALSE_ALARM, combs
from spoolwright.bench.bearing_rates import (
    BALL,
    CAGE,
    CANNOT_TELL,
    INNER,
    OUTER,
    SOUND,
    VERDICTS,
    Bearing,
    highest,
    rates,
)
from spoolwright.bench.bearing_verdict import Heard
from spoolwright.bench.comb import Comb
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.faintest import faintest
from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable

__all__ = [
    "BALL",
    "CAGE",
    "CANNOT_TELL",
    "INNER",
    "OUTER",
    "SOUND",
    "VERDICTS",
    "Bearing",
    "BearingNoise",
    "listen",
]

LONGEST = 120.0
"""Seconds that are listened to; what a longer recording holds beyond them is not needed."""

FEWEST_TURNS = 25
"""Turns below which the lines of ball and cage run into each other."""

SPEED_TOLERANCE, SLIP, SLIP_UNKNOWN_SPEED = 0.045, 0.015, 0.03
"""How far from the typed speed a line of the shaft is looked for, by which a motor slows under load (common
practice); how far balls slip off their rates; what is allowed for both, if no line says the speed."""

_SHAFT_MULTIPLES = 12


@dataclass(frozen=True, eq=False)
class BearingNoise:
    """One verdict with what it rests on. `spectrum` is the envelope spectrum to draw beside it.

    `turns` and `rates` are in Hz; of a coast they are in times a turn, and `unit` says so.
    """

    verdict: str
    confidence: float
    evidence: tuple[str, ...]
    turns: float
    turns_heard: bool
    rates: dict[str, float]
    combs: dict[str, Comb]
    spectrum: LineSpectrum | None = None
    notes: tuple[str, ...] = field(default=())
    unit: str = "Hz"


def listen(recording: Recording, bearing: Bearing, speed: float) -> BearingNoise:
    """What the noise of a bearing at a steady speed says of it.

    Parameters
    ----------
    recording : Recording
        Sound or vibration of one channel, full scale 1 [1], with its rate [Hz].
    bearing : Bearing
        Number of balls [-], ball and pitch diameter [m], contact angle [rad].
    speed : float
        Speed of the inner ring against the outer [rad/s], within 3 %.

    Returns
    -------
    BearingNoise
        `verdict`: outer, inner, ball, cage, sound or cannot tell; `confidence` between 0 and 1; `evidence` in
        sentences; the combs of lines found and the envelope spectrum.

    Raises
    ------
    Unreadable
        A speed that is not above zero.

    Notes
    -----
    A damage is named only where lines at its rate stand in the envelope spectrum of some band, that noise
    alone would not make once in ten thousand recordings; where the first line and at least two more stand,
    none of them at a multiple or quarter of the shaft's rate or at mains hum; where loudness swells with them
    by a quarter or more; and where no other damage explains the lines half as well. "Sound" needs more than
    silence: the machine must be heard to turn at the speed, no band may be spiky or swell at an unknown rate,
    and the noise must lie low, under a quarter above 1.5 kHz, where knocks ring. All else is "cannot tell".
    Confidence is a grade of that evidence and no measured chance.

    Source
    ------
    Randall and Antoni, Rolling element bearing diagnostics - a tutorial, Mechanical Systems and Signal
    Processing 25 (2011) (from memory). Quarter, half and the other limits: judgement priors.

    Examples
    --------
    >>> hiss = np.random.default_rng(1).normal(0.0, 0.1, 24000).astype(np.float32)
    >>> listen(Recording(hiss, 12000.0), Bearing(9, 7.94e-3, 39.04e-3), 183.0).verdict
    'cannot tell'
    """
    if not np.isfinite(speed) or speed <= 0:
        raise Unreadable("the speed is not above zero", "speed", 'the speed of the shaft, such as "1750 rpm"')
    typed = speed / (2 * pi)
    samples = recording.samples[: int(LONGEST * recording.rate)]
    expected = rates(bearing, typed)
    wanted = envelope.bands(recording.rate, expected[INNER])
    reason = _too_little(len(samples) / recording.rate * typed, bool(wanted))
    if reason:
        return BearingNoise(CANNOT_TELL, 0.0, (reason,), typed, False, expected, {})
    even, banged = bangs.turned_down(samples, recording.rate, typed)
    heard = _hear(even, recording.rate, bearing, typed, wanted)
    notes = (*recording.notes, *about_clipping(samples), *about_bangs(banged))
    return concluded(heard, notes)


def concluded(heard: Heard, notes: tuple[str, ...]) -> BearingNoise:
    """What was heard with its verdict.

    Parameters
    ----------
    heard : Heard
        Spectra, combs and loudness; rates in [Hz] or in times a turn [1].
    notes : tuple of str
        What else is to be said of the recording [-].

    Returns
    -------
    BearingNoise
        Verdict, grade [1], evidence, and the spectrum to draw.

    Source
    ------
    `bearing_verdict.judge`.

    Examples
    --------
    >>> one = LineSpectrum.of((0.0, 9.0), 1.0, np.ones(9), np.ones(9), 1)
    >>> concluded(Heard(30.0, False, {}, (one,), {}, 0.9, 0.0), ()).verdict
    'cannot tell'
    """
    verdict, confidence, evidence = bearing_verdict.judge(heard)
    return BearingNoise(
        verdict,
        confidence,
        evidence,
        heard.turns,
        heard.turns_heard,
        heard.rates,
        heard.combs,
        bearing_verdict.shown(heard, verdict),
        notes,
        heard.unit,
    )


def _too_little(turns: float, has_bands: bool) -> str:
    if turns < FEWEST_TURNS:
        return f"The recording holds {turns:.0f} turns; it takes {FEWEST_TURNS} to tell the rates apart."
    if not has_bands:
        return "The recording has too few samples a second for knocks as quick as these."
    return ""


def _hear(
    samples: envelope.Samples,
    rate: float,
    bearing: Bearing,
    typed: float,
    wanted: list[tuple[float, float]],
) -> Heard:
    cut = envelope.pieces(samples, rate, typed)
    expected = rates(bearing, typed)
    spectra = tuple(envelope.spectra(cut, rate, wanted, highest(expected), typed))
    sound = envelope.sound_lines(cut, rate, (_SHAFT_MULTIPLES + 1) * typed, typed)
    turns, turns_heard = _turns(sound, spectra[:3], typed)
    expected = rates(bearing, turns)
    found = combs(spectra, expected, turns, SLIP if turns_heard else SLIP_UNKNOWN_SPEED)
    loud = loudness.of(samples, rate, wanted)
    return Heard(
        turns,
        turns_heard,
        expected,
        spectra,
        found,
        loud.high,
        loud.spikiness,
        faintest(spectra, loud.shares, expected[OUTER]),
    )


def _turns(sound: LineSpectrum, spectra: tuple[LineSpectrum, ...], typed: float) -> tuple[float, bool]:
    """The shaft's own rate near the typed one, from lines in the sound and in its loudness."""
    found = [comb.comb(s, typed, SPEED_TOLERANCE, 4, 0.0, None) for s in spectra]
    found.append(comb.comb(sound, typed, SPEED_TOLERANCE, _SHAFT_MULTIPLES, 0.0, None))
    best = min(found, key=lambda one: one.log_chance)
    if best.log_chance + log(len(found)) < FALSE_ALARM and len(best.multiples) >= 2:
        return best.rate, True
    return typed, False


def about_clipping(samples: np.ndarray) -> tuple[str, ...]:
    """A sentence where the recording is clipped, else none.

    Parameters
    ----------
    samples : array
        Sound, full scale 1 [1], shape (n,).

    Returns
    -------
    tuple of str
        One sentence or none.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> len(about_clipping(np.ones(100)))
    1
    """
    peak = float(np.abs(samples).max())
    share = float(np.mean(np.abs(samples) > 0.995 * peak))
    if peak > 0.98 and share > 1e-4:
        return ("The recording is clipped: too loud for the microphone. Record it again further off.",)
    return ()


def about_bangs(share: float) -> tuple[str, ...]:
    """A sentence where part of the recording was far louder than the rest, else none.

    Parameters
    ----------
    share : float
        Share of the time that was turned down [1], 0 to 1.

    Returns
    -------
    tuple of str
        One sentence or none.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> about_bangs(0.0), len(about_bangs(0.03))
    ((), 1)
    """
    if share <= 0:
        return ()
    return (
        f"{share:.1%} of the recording is far louder than the rest, a word or a bang, and was turned down.",
    )
