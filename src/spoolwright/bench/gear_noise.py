"""What the noise of turning gears says: one tooth of the main gear, of the pinion, sound, or cannot tell."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from math import log, pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import envelope, loudness, mesh_track, sidebands, tooth_loudness
from spoolwright.bench.bearing_noise import about_clipping
from spoolwright.bench.bearing_rates import CANNOT_TELL, SOUND
from spoolwright.bench.mesh_track import MeshTrack
from spoolwright.bench.recording import Recording
from spoolwright.bench.tooth_loudness import LoudTooth
from spoolwright.bench.unreadable import Unreadable

MAIN, PINION, IDLER = "main", "pinion", "idler"
VERDICTS = (MAIN, PINION, IDLER, SOUND, CANNOT_TELL)

LONGEST = 120.0
"""Seconds that are listened to."""

FEWEST_TURNS = 12
"""Turns of the slowest wheel below which chance alone may make a tooth loud: judgement prior."""

FALSE_ALARM, HINT = log(1e-4), log(1e-2)

_SWELLS, _HINTS = 0.5, 0.3
_RIVAL = 0.5
_HIDES = 3.0
_SPIKY = 0.75
_NAMES = {MAIN: "main gear", PINION: "pinion", IDLER: "wheel between them"}


@dataclass(frozen=True)
class Gears:
    """Teeth of the wheels that mesh; `idler` 0 where none runs between them."""

    main: int
    pinion: int
    idler: int = 0

    @property
    def wheels(self) -> dict[str, int]:
        found = {MAIN: self.main, PINION: self.pinion}
        return found | ({IDLER: self.idler} if self.idler else {})


@dataclass(frozen=True, eq=False)
class GearNoise:
    """One verdict with what it rests on.

    `speed` is the mean speed of the main gear [rad/s]; `loudest` the loudest tooth of each wheel, `beside`
    the sidebands of the mesh at each wheel's turning over the mesh itself [1].
    """

    verdict: str
    confidence: float
    evidence: tuple[str, ...]
    speed: float
    mesh_rate: float
    loudest: dict[str, LoudTooth]
    beside: dict[str, float]
    notes: tuple[str, ...] = field(default=())


def listen(recording: Recording, gears: Gears, speed: float) -> GearNoise:
    """What the noise of gears turned at a steady speed says of their teeth.

    Parameters
    ----------
    recording : Recording
        Sound of one channel, full scale 1 [1], with its rate [Hz].
    gears : Gears
        Teeth of main gear, pinion and what runs between them [-].
    speed : float
        Speed of the main gear, which is the handle's [rad/s], within a fifth.

    Returns
    -------
    GearNoise
        `verdict`: main, pinion, idler, sound or cannot tell; `confidence` between 0 and 1; `evidence` in
        sentences.

    Raises
    ------
    Unreadable
        A speed that is not above zero, wheels that are none.

    Notes
    -----
    The tone of the mesh, teeth times speed, is followed and counts the teeth. Loudness tooth by tooth is
    folded by each wheel's count: a chipped tooth is loud each time it comes round, and only on its own wheel.
    A wheel is named where one tooth is among the loudest tenth so often that even noise does it not once in
    ten thousand recordings, is half as loud again on average, and no other tooth of the wheel is half so
    loud. Sound needs a mesh that is heard, a dozen turns of the slowest wheel, and noise in which a tooth of
    four times the loudness would have shown. An uneven hand falls out, for it is slower than 25 teeth.

    Source
    ------
    McFadden, Mechanical Systems and Signal Processing 1 (1987), for averaging by the wheel's turn; Randall,
    A new method of modeling gear faults, Journal of Mechanical Design 104 (1982), for sidebands at the
    turning rate of the faulty wheel (both from memory). Limits: judgement priors, tried on simulations.

    Examples
    --------
    >>> hiss = np.random.default_rng(1).normal(0.0, 0.1, 48000).astype(np.float32)
    >>> listen(Recording(hiss, 8000.0), Gears(98, 17), 12.0).verdict
    'cannot tell'
    """
    if not np.isfinite(speed) or speed <= 0:
        raise Unreadable("the speed is not above zero", "speed", 'the speed of the handle, such as "100 rpm"')
    if min(gears.wheels.values()) < 5 or max(gears.wheels.values()) > 400:
        raise Unreadable("the teeth are not those of gears", "teeth", "5 to 400 teeth a wheel")
    samples = recording.samples[: int(LONGEST * recording.rate)]
    expected = gears.main * speed / (2 * pi)
    turns = len(samples) / recording.rate * expected / max(gears.wheels.values())
    reason = _too_little(turns, recording.rate, expected)
    if reason:
        return GearNoise(CANNOT_TELL, 0.0, (reason,), speed, expected, {}, {})
    track = mesh_track.follow(samples, recording.rate, expected)
    heard = _hear(samples, recording.rate, gears, track)
    notes = (*recording.notes, *about_clipping(samples))
    verdict, confidence, evidence = _judge(heard, gears, track)
    beside = sidebands.ratios(samples, recording.rate, track, gears.wheels)
    told = (*evidence, *_about_mesh(gears, track, beside))
    turning = 2 * pi * track.rate / gears.main
    return GearNoise(verdict, confidence, told, turning, track.rate, heard.loudest, beside, notes)


@dataclass(frozen=True, eq=False)
class _Heard:
    """The loudest tooth of each wheel, those that stay once the strongest is explained, and the noise."""

    loudest: dict[str, LoudTooth]
    apart: dict[str, LoudTooth]
    bands: int
    hides: float
    spikiness: float


def _too_little(turns: float, rate: float, mesh: float) -> str:
    if turns < FEWEST_TURNS:
        fewest = f"it takes {FEWEST_TURNS} to rule out chance."
        return f"The recording holds {turns:.0f} turns of the slowest wheel; {fewest}"
    if not envelope.bands(rate, mesh):
        return "The recording has too few samples a second for teeth as quick as these."
    return ""


def _hear(samples: NDArray[np.floating], rate: float, gears: Gears, track: MeshTrack) -> _Heard:
    wanted = envelope.bands(rate, track.rate)
    heard = list(tooth_loudness.series(samples, rate, track, wanted))
    loudest = {name: _loudest(heard, teeth) for name, teeth in gears.wheels.items()}
    first = min(loudest, key=lambda name: loudest[name].log_chance)
    hidden = tooth_loudness.explained(loudest[first], len(heard[0][1]))
    apart = {name: _loudest(heard, teeth, hidden) for name, teeth in gears.wheels.items() if name != first}
    hides = min(float(np.quantile(loud, 0.9)) for _, loud in heard) - 1
    return _Heard(loudest, apart, len(heard), hides, loudness.of(samples, rate, wanted).spikiness)


def _loudest(
    heard: list[tuple[tuple[float, float], NDArray[np.float64]]],
    teeth: int,
    hidden: NDArray[np.bool_] | None = None,
) -> LoudTooth:
    found = [tooth_loudness.loud_tooth(loud, teeth, band, hidden) for band, loud in heard]
    sure = [one for one in found if one.log_chance < FALSE_ALARM and one.swelling > _SWELLS]
    if sure:
        return max(sure, key=lambda one: one.swelling)
    return min(found, key=lambda one: one.log_chance)


def _is_sure(one: LoudTooth, searched: float) -> bool:
    return one.log_chance + searched < FALSE_ALARM and one.swelling > _SWELLS


def _judge(heard: _Heard, gears: Gears, track: MeshTrack) -> tuple[str, float, tuple[str, ...]]:
    searched = log(heard.bands * len(gears.wheels))
    if not track.is_heard:
        reason = "The tone of the meshing teeth is not heard clearly enough near the speed given to count by."
        return CANNOT_TELL, 0.0, (reason,)
    first = min(heard.loudest, key=lambda name: heard.loudest[name].log_chance)
    best = heard.loudest[first]
    if not _is_sure(best, searched):
        return _without_damage(heard, searched)
    others = [name for name, one in heard.apart.items() if _is_sure(one, searched)]
    told = tuple(_in_words(name, heard.loudest[name]) for name in (first, *others))
    if best.rival > _RIVAL:
        return CANNOT_TELL, 0.0, (*told, "Other teeth of it are loud too: no single tooth can be named.")
    if others:
        return CANNOT_TELL, 0.0, (*told, "Two wheels at once: neither is named alone.")
    sure = min(1.0, -best.log_chance / 40) * min(1.0, best.swelling / 2)
    return first, round(0.5 + 0.48 * sure, 2), told


def _without_damage(heard: _Heard, searched: float) -> tuple[str, float, tuple[str, ...]]:
    nothing = "No tooth of either wheel is loud each time it comes round."
    doubts = tuple(_doubts(heard, searched))
    if doubts:
        return CANNOT_TELL, 0.0, (nothing, *doubts)
    seen = f"A tooth {1 + heard.hides:.1f} times as loud as the rest, each time round, would have shown."
    return SOUND, round(0.7 - 0.2 * heard.hides / _HIDES, 2), (nothing, seen)


def _doubts(heard: _Heard, searched: float) -> Iterator[str]:
    for name, one in heard.loudest.items():
        if one.log_chance + searched < HINT and one.swelling > _HINTS:
            yield f"A hint of it: {_in_words(name, one)}"
    if heard.hides > _HIDES:
        yield f"The noise is so uneven that a tooth {1 + heard.hides:.1f} times as loud would hide in it."
    if heard.spikiness > _SPIKY:
        yield "The noise is spiky, as of knocks, but the knocks keep to no wheel's turn."


def _in_words(name: str, one: LoudTooth) -> str:
    return (
        f"One tooth of the {_NAMES[name]} ({one.teeth} teeth) is {1 + one.swelling:.1f} times as loud as the "
        f"rest from {one.low:.0f} to {one.high:.0f} Hz, over {one.turns} turns of it."
    )


def _about_mesh(gears: Gears, track: MeshTrack, beside: dict[str, float]) -> Iterator[str]:
    if not track.is_heard:
        return
    handle = 60 * track.rate / gears.main
    yield (
        f"The teeth mesh at {track.rate:.0f} Hz, so the handle turns at {handle:.0f} rpm, uneven by "
        f"{track.uneven:.1%}."
    )
    told = ", ".join(f"{_NAMES[name]} {ratio:.0%}" for name, ratio in beside.items())
    yield f"Sidebands, as a share of the mesh, at the turning of: {told}. A hand makes the first too."
