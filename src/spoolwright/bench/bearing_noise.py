"""What a bearing's noise at a steady speed says: a ring, a ball, the cage, sound, or cannot tell."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from math import exp, log, pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import comb, envelope
from spoolwright.bench.comb import Comb
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable
from spoolwright.mechanics.rolling import defect_frequencies

OUTER, INNER, BALL, CAGE, SOUND, CANNOT_TELL = "outer", "inner", "ball", "cage", "sound", "cannot tell"
VERDICTS = (OUTER, INNER, BALL, CAGE, SOUND, CANNOT_TELL)

LONGEST = 120.0
"""Seconds that are listened to; what a longer recording holds beyond them is not needed."""

FEWEST_TURNS = 25
"""Turns below which the lines of ball and cage run into each other."""

SPEED_TOLERANCE, SLIP, SLIP_UNKNOWN_SPEED = 0.03, 0.015, 0.03
"""How far the typed speed may be off; how far balls slip off their rates; both, if no line says the speed."""

FALSE_ALARM = log(1e-4)
"""Natural logarithm of the chance that noise alone is called a damage, over all that is searched."""

_MULTIPLES = {OUTER: 5, INNER: 5, BALL: 5, CAGE: 6}
_DEEP = {OUTER: 0.25, INNER: 0.25, BALL: 0.25, CAGE: 0.4}
_FIRST_DEEP = 0.1
_RIVAL = 0.5
_SHAFT_MULTIPLES = 12
_LOUD_ABOVE, _LOUD_SHARE = 1500.0, 0.25
_SPIKY = 0.75
_UNKNOWN_DEEP = 0.35
_HALVES_AND_QUARTERS, _AUDIBLE = 7, 0.01


@dataclass(frozen=True)
class Bearing:
    """What the rates need: count of balls, their diameter and their circle's [m], contact angle [rad]."""

    balls: int
    ball_diameter: float
    pitch_diameter: float
    contact_angle: float = 0.0


@dataclass(frozen=True, eq=False)
class BearingNoise:
    """One verdict with what it rests on. `spectrum` is the envelope spectrum to draw beside it."""

    verdict: str
    confidence: float
    evidence: tuple[str, ...]
    turns: float
    turns_heard: bool
    rates: dict[str, float]
    combs: dict[str, Comb]
    spectrum: LineSpectrum | None = None
    notes: tuple[str, ...] = field(default=())


@dataclass(frozen=True, eq=False)
class _Heard:
    """All that is known of a recording before it is judged."""

    turns: float
    turns_heard: bool
    rates: dict[str, float]
    spectra: tuple[LineSpectrum, ...]
    combs: dict[str, Comb]
    loud_share: float
    spikiness: float


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
    rates = _rates(bearing, typed)
    wanted = envelope.bands(recording.rate, rates[INNER])
    reason = _too_little(len(samples) / recording.rate * typed, bool(wanted))
    if reason:
        return BearingNoise(CANNOT_TELL, 0.0, (reason,), typed, False, rates, {})
    heard = _hear(Recording(samples, recording.rate), bearing, typed, wanted)
    verdict, confidence, evidence = _judge(heard)
    shown = _shown(heard, verdict)
    notes = tuple(recording.notes) + _about_clipping(samples)
    return BearingNoise(
        verdict, confidence, evidence, heard.turns, heard.turns_heard, heard.rates, heard.combs, shown, notes
    )


def _rates(bearing: Bearing, turns: float) -> dict[str, float]:
    found = defect_frequencies(
        60 * turns, bearing.balls, bearing.ball_diameter, bearing.pitch_diameter, bearing.contact_angle
    )
    return {
        OUTER: float(found["outer"]),
        INNER: float(found["inner"]),
        BALL: float(found["ball"]),
        CAGE: float(found["cage"]),
    }


def _too_little(turns: float, has_bands: bool) -> str:
    if turns < FEWEST_TURNS:
        return f"The recording holds {turns:.0f} turns; it takes {FEWEST_TURNS} to tell the rates apart."
    if not has_bands:
        return "The recording has too few samples a second for knocks as quick as these."
    return ""


def _hear(recording: Recording, bearing: Bearing, typed: float, wanted: list[tuple[float, float]]) -> _Heard:
    cut = envelope.pieces(recording.samples, recording.rate, typed)
    rates = _rates(bearing, typed)
    highest = (max(_MULTIPLES.values()) + 0.5) * max(rates[INNER], rates[BALL])
    spectra = tuple(envelope.spectra(cut, recording.rate, wanted, highest, typed))
    sound = envelope.sound_lines(cut, recording.rate, (_SHAFT_MULTIPLES + 1) * typed, typed)
    turns, turns_heard = _turns(sound, spectra[:3], typed)
    rates = _rates(bearing, turns)
    combs = _combs(spectra, rates, turns, SLIP if turns_heard else SLIP_UNKNOWN_SPEED)
    loud, spiky = _loudness(recording, wanted)
    return _Heard(turns, turns_heard, rates, spectra, combs, loud, spiky)


def _turns(sound: LineSpectrum, spectra: tuple[LineSpectrum, ...], typed: float) -> tuple[float, bool]:
    """The shaft's own rate near the typed one, from lines in the sound and in its loudness."""
    found = [comb.comb(s, typed, SPEED_TOLERANCE, 4, 0.0, None) for s in spectra]
    found.append(comb.comb(sound, typed, SPEED_TOLERANCE, _SHAFT_MULTIPLES, 0.0, None))
    best = min(found, key=lambda one: one.log_chance)
    if best.log_chance + log(len(found)) < FALSE_ALARM and len(best.multiples) >= 2:
        return best.rate, True
    return typed, False


def _combs(
    spectra: tuple[LineSpectrum, ...], rates: dict[str, float], turns: float, slip: float
) -> dict[str, Comb]:
    """The best comb of each kind; those of weaker kinds without the lines that a stronger one explains."""
    found: dict[str, Comb] = {}
    taken: tuple[float, ...] = ()
    left = list(rates)
    while left:
        hidden = comb.foreign(spectra[0], turns, taken)
        combs = {kind: _best(kind, spectra, rates, (turns, slip), hidden) for kind in left}
        strongest = max(left, key=lambda kind: (combs[kind].depth, -combs[kind].log_chance))
        found[strongest] = combs[strongest]
        left.remove(strongest)
        if combs[strongest].log_chance >= FALSE_ALARM or combs[strongest].depth <= 0:
            return combs | found
        top = len(spectra[0].above) * spectra[0].step
        taken += comb.explained(combs[strongest], turns, rates[CAGE], top)
    return found


def _best(
    kind: str,
    spectra: tuple[LineSpectrum, ...],
    rates: dict[str, float],
    shaft: tuple[float, float],
    hidden: NDArray[np.bool_],
) -> Comb:
    turns, slip = shaft
    beside = {INNER: turns, BALL: rates[CAGE]}.get(kind, 0.0)
    found = [comb.comb(s, rates[kind], slip, _MULTIPLES[kind], beside, hidden) for s in spectra]
    searched = log(len(found) * len(rates))
    sure = [one for one in found if one.log_chance + searched < FALSE_ALARM and _is_a_family(kind, one)]
    if sure:
        return max(sure, key=lambda one: one.depth)
    return min(found, key=lambda one: one.log_chance)


def _is_a_family(kind: str, found: Comb) -> bool:
    """The first line and two more at least: one line alone is a tone, a beat, a neighbour's harmonic."""
    if 1 not in found.multiples:
        return False
    count = len(found.multiples)
    if kind == CAGE:
        return count >= 4
    if kind == OUTER:
        return count >= 3
    return count + found.sidebands >= 3


def _loudness(recording: Recording, wanted: list[tuple[float, float]]) -> tuple[float, float]:
    """Share of the noise that lies above 1.5 kHz, and how spiky the spikiest band is (0 for plain noise)."""
    whole = np.fft.rfft(recording.samples.astype(np.float64))
    step = recording.rate / len(recording.samples)
    power = np.abs(whole) ** 2
    low = wanted[0][0]
    split = max(_LOUD_ABOVE, 2 * low)
    all_of_it = power[int(low / step) :].sum()
    share = float(power[int(split / step) :].sum() / all_of_it) if all_of_it > 0 else 1.0
    parts = [whole[int(a / step) : int(b / step)] for a, b in wanted[:_HALVES_AND_QUARTERS]]
    heard = [part for part in parts if (np.abs(part) ** 2).sum() > _AUDIBLE * all_of_it]
    return share, max((_kurtosis(part) for part in heard), default=0.0)


def _kurtosis(part: NDArray[np.complex128]) -> float:
    """Of a band's own sound, 0 for plain noise; without the ends, where the recording breaks off."""
    swelling = np.abs(np.fft.ifft(part)) ** 2
    ends = len(swelling) // 50
    swelling = swelling[ends : len(swelling) - ends]
    mean = float(swelling.mean())
    return float((swelling**2).mean()) / mean**2 - 2.0 if mean > 0 else 0.0


def _judge(heard: _Heard) -> tuple[str, float, tuple[str, ...]]:
    searched = log(len(heard.spectra) * len(heard.combs))
    seen = {
        kind: one
        for kind, one in heard.combs.items()
        if one.log_chance + searched < FALSE_ALARM and _is_a_family(kind, one)
    }
    if not seen:
        return _without_damage(heard)
    kind, *others = sorted(seen, key=lambda name: -seen[name].depth)
    best = seen[kind]
    told = tuple(_in_words(name, seen[name]) for name in (kind, *others))
    if best.depth < _DEEP[kind] or best.lines[0].size < _FIRST_DEEP:
        return (
            CANNOT_TELL,
            0.0,
            (*told, "Too faint to be called damage: a sound bearing can do as much."),
        )
    size, rate = _stranger(best, heard)
    if size > best.depth:
        louder = f"Loudness swells more, by {size:.0%}, at {rate:.1f} Hz, which none of the rates explains."
        return CANNOT_TELL, 0.0, (*told, louder)
    rivals = [name for name in others if seen[name].depth > _RIVAL * best.depth]
    if rivals:
        return CANNOT_TELL, 0.0, (*told, "Two at once, neither clearly stronger: no ring can be named.")
    if kind == CAGE and others:
        return (
            CANNOT_TELL,
            0.0,
            (*told, "A damaged ball swells at the cage's rate too."),
        )
    return kind, _confidence(best, heard), told + _about_speed(heard)


def _without_damage(heard: _Heard) -> tuple[str, float, tuple[str, ...]]:
    nothing = "No family of lines stands at the rate of either ring, the balls or the cage."
    doubts = tuple(_doubts(heard))
    if doubts:
        return CANNOT_TELL, 0.0, (nothing, *doubts)
    confidence = 0.5 + 0.25 * (1 - heard.loud_share / _LOUD_SHARE)  # silence never proves as much as a knock
    quiet = f"{heard.loud_share:.0%} of the noise lies high, where knocks ring, and none of it is spiky."
    limit = "Knocks that the machine's own noise and the recording's hiss drown would not be found."
    return SOUND, round(confidence, 2), (nothing, *_about_speed(heard), quiet, limit)


def _doubts(heard: _Heard) -> Iterator[str]:
    if not heard.turns_heard:
        yield "The machine is not heard to turn at the speed given, so silence proves nothing."
    if heard.loud_share > _LOUD_SHARE:
        yield (
            f"{heard.loud_share:.0%} of the noise lies high, where knocks ring: hiss of the recording or a "
            "rough bearing, which cannot be told apart."
        )
    if heard.spikiness > _SPIKY:
        yield "The noise is spiky, as of knocks, but the knocks keep to none of the rates."
    size, rate = max(_unknown(one, heard.turns) for one in heard.spectra[:_HALVES_AND_QUARTERS])
    if size > _UNKNOWN_DEEP:
        yield f"Loudness swells by {size:.0%} at {rate:.1f} Hz, which is none of the rates."


def _stranger(best: Comb, heard: _Heard) -> tuple[float, float]:
    """Size and rate of the strongest swelling in a comb's own band that it does not explain."""
    spectrum = next(s for s in heard.spectra if (s.low, s.high) == (best.low, best.high))
    top = len(spectrum.above) * spectrum.step
    return _unknown(spectrum, heard.turns, comb.explained(best, heard.turns, heard.rates[CAGE], top))


def _unknown(spectrum: LineSpectrum, turns: float, known: tuple[float, ...] = ()) -> tuple[float, float]:
    """Size and rate of the strongest swelling that is neither the shaft's nor hum."""
    places = np.arange(len(spectrum.above)) * spectrum.step
    stands = (spectrum.log_chance + log(len(places)) < comb.SURE) & ~comb.foreign(spectrum, turns, known)
    size = np.where(stands, spectrum.size, 0.0)
    at = int(np.argmax(size))
    return float(size[at]), float(places[at])


def _confidence(best: Comb, heard: _Heard) -> float:
    """Between 0.5 and 0.98: more lines, deeper swelling, a shaft that is heard."""
    lines = min(1.0, (len(best.multiples) + best.sidebands) / 5)
    deep = 1 - exp(-best.depth / 0.5)
    return round(0.5 + 0.48 * lines * deep * (1.0 if heard.turns_heard else 0.7), 2)


_NAMES = {OUTER: "outer ring", INNER: "inner ring", BALL: "balls", CAGE: "cage"}


def _in_words(kind: str, found: Comb) -> str:
    beside = {INNER: "the shaft's", BALL: "the cage's"}.get(kind, "")
    sides = f", {found.sidebands} lines beside them at {beside} rate" if beside and found.sidebands else ""
    multiples = ", ".join(str(m) for m in found.multiples)
    return (
        f"From {found.low:.0f} to {found.high:.0f} Hz loudness swells by {found.depth:.0%} at "
        f"{found.rate:.2f} Hz, times {multiples}{sides}; {_NAMES[kind]}: {found.expected:.2f} Hz."
    )


def _about_speed(heard: _Heard) -> tuple[str, ...]:
    if heard.turns_heard:
        return (f"The shaft is heard to turn at {60 * heard.turns:.0f} rpm.",)
    return (f"The shaft's own turning is not heard; {60 * heard.turns:.0f} rpm is believed as given.",)


def _about_clipping(samples: np.ndarray) -> tuple[str, ...]:
    peak = float(np.abs(samples).max())
    share = float(np.mean(np.abs(samples) > 0.995 * peak))
    if peak > 0.98 and share > 1e-4:
        return ("The recording is clipped: too loud for the microphone. Record it again further off.",)
    return ()


def _shown(heard: _Heard, verdict: str) -> LineSpectrum:
    found = heard.combs.get(verdict)
    if found is None:
        return heard.spectra[0]
    return next(s for s in heard.spectra if (s.low, s.high) == (found.low, found.high))
