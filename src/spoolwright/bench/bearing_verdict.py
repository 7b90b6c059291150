"""What lines at a bearing's rates prove: which part is damaged, that it is sound, or nothing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import exp, log

import numpy as np

from spoolwright.bench import comb
from spoolwright.bench.bearing_combs import FALSE_ALARM, is_a_family
from spoolwright.bench.bearing_rates import BALL, CAGE, CANNOT_TELL, INNER, OUTER, SOUND
from spoolwright.bench.comb import Comb
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.faintest import Faintest, as_ratio

_DEEP = {OUTER: 0.25, INNER: 0.25, BALL: 0.25, CAGE: 0.4}
_FIRST_DEEP = 0.1
_RIVAL = 0.5
_LOUD_SHARE = 0.25
_BLURRED = 0.01
"""Knocks a little early or late blur a line into its neighbours, which are no stranger then."""
_OFF = 0.02
_SPIKY = 0.75
_UNKNOWN_DEEP = 0.35
_HALVES_AND_QUARTERS = 7
_HINT = log(1e-2)
_HINT_DEEP = {OUTER: 0.08, INNER: 0.08, BALL: 0.08, CAGE: 0.2}
_HINT_OF_ONE = 1.5
_HIDES_TOO_MUCH = -6.0

Judged = tuple[str, float, tuple[str, ...]]


@dataclass(frozen=True, eq=False)
class Heard:
    """All that is known of a recording before it is judged.

    `turns` and `rates` are in Hz, or in times a turn where `unit` says so. `loud_share` is the share of the
    noise above 1.5 kHz, `spikiness` how far its spikiest band is from plain noise, `faintest` the faintest
    knocks of the outer ring that would have shown.
    """

    turns: float
    turns_heard: bool
    rates: dict[str, float]
    spectra: tuple[LineSpectrum, ...]
    combs: dict[str, Comb]
    loud_share: float
    spikiness: float
    faintest: Faintest | None = None
    unit: str = "Hz"


def judge(heard: Heard) -> Judged:
    """The verdict on what was heard, its grade between 0 and 1, and what it rests on.

    Parameters
    ----------
    heard : Heard
        Spectra, combs and loudness; rates in [Hz] or in times a turn [1].

    Returns
    -------
    tuple
        Verdict, grade of the evidence [1], sentences.

    Notes
    -----
    A damage is named where a family of lines stands at its rate, loudness swells with them by a quarter or
    more (a cage: 40 %), no unknown rate swells it more, and no other part explains half as much. Sound: no
    family, no hint of one (a chance of noise under one in a hundred with lines that swell by 8 %), the
    shaft heard, the noise low and even, and no band that hides knocks of a fifth of the noise's power.

    Source
    ------
    Limits: judgement priors, tried on simulated knocks and open recordings.

    Examples
    --------
    >>> judge(Heard(30.0, False, {}, (), {}, 0.9, 0.0))[0]
    'cannot tell'
    """
    seen = {
        kind: one
        for kind, one in heard.combs.items()
        if one.log_chance + _searched(heard) < FALSE_ALARM and is_a_family(kind, one)
    }
    if not seen:
        return _without_damage(heard)
    kind, *others = sorted(seen, key=lambda name: -seen[name].depth)
    best = seen[kind]
    told = tuple(_in_words(name, seen[name], heard.unit) for name in (kind, *others))
    against = _against(kind, others, seen, heard)
    if against:
        return CANNOT_TELL, 0.0, (*told, against)
    return kind, _confidence(best, heard), told + _about_speed(heard)


def _searched(heard: Heard) -> float:
    return log(max(1, len(heard.spectra) * len(heard.combs)))


def _against(kind: str, others: list[str], seen: dict[str, Comb], heard: Heard) -> str:
    """What speaks against naming the strongest comb, or nothing."""
    best = seen[kind]
    if best.depth < _DEEP[kind] or best.lines[0].size < _FIRST_DEEP:
        return "Too faint to be called damage: a sound bearing can do as much."
    off = abs(best.rate / best.expected - 1)
    if off > (_OFF if heard.turns_heard else 2 * _OFF):
        return f"The lines stand {off:.1%} off its rate: balls slip less than that."
    size, rate = _stranger(kind, best, heard)
    if size > best.depth:
        where = f"{rate:.1f} {heard.unit}"
        return f"Loudness swells more, by {size:.0%}, at {where}, which none of the rates explains."
    if any(seen[name].depth > _RIVAL * best.depth for name in others):
        return "Two at once, neither clearly stronger: no ring can be named."
    hinted = _is_a_hint(BALL, heard.combs[BALL], _searched(heard)) if BALL in heard.combs else False
    if kind == CAGE and (others or hinted):
        return "A damaged ball swells at the cage's rate too."
    return ""


def _without_damage(heard: Heard) -> Judged:
    nothing = "No family of lines stands at the rate of either ring, the balls or the cage."
    doubts = tuple(_doubts(heard))
    if doubts:
        return CANNOT_TELL, 0.0, (nothing, *doubts)
    confidence = 0.5 + 0.25 * (1 - heard.loud_share / _LOUD_SHARE)  # silence never proves as much as a knock
    quiet = f"{heard.loud_share:.0%} of the noise lies high, where knocks ring, and none of it is spiky."
    return SOUND, round(confidence, 2), (nothing, *_about_speed(heard), quiet, *_limits(heard))


def _limits(heard: Heard) -> Iterator[str]:
    if heard.faintest is not None:
        found = heard.faintest
        yield (
            f"Knocks of {as_ratio(found.level)} the noise's power would have shown in every band, those that "
            f"ring where it is quietest from {as_ratio(found.best)} it; fainter ones would not."
        )
    yield "Knocks that the machine's own noise and the recording's hiss drown would not be found."


def _doubts(heard: Heard) -> Iterator[str]:
    if not heard.turns_heard:
        yield "The machine is not heard to turn at the speed given, so silence proves nothing."
    hints = [kind for kind, one in heard.combs.items() if _is_a_hint(kind, one, _searched(heard))]
    if hints:
        names = " and ".join(_NAMES[kind] for kind in hints)
        yield f"A hint of lines stands at the rate of: {names}; too little to name, too much to rule out."
    if heard.loud_share > _LOUD_SHARE:
        yield (
            f"{heard.loud_share:.0%} of the noise lies high, where knocks ring: hiss of the recording or a "
            "rough bearing, which cannot be told apart."
        )
    if heard.spikiness > _SPIKY:
        yield "The noise is spiky, as of knocks, but the knocks keep to none of the rates."
    if heard.faintest is not None and heard.faintest.level > _HIDES_TOO_MUCH:
        found = heard.faintest
        yield (
            f"From {found.low:.0f} to {found.high:.0f} Hz the noise would hide knocks up to "
            f"{as_ratio(found.level)} its power: too short or too uneven a recording."
        )
    unknown = [_unknown(one, heard.turns) for one in heard.spectra[:_HALVES_AND_QUARTERS]]
    size, rate = max(unknown, default=(0.0, 0.0))
    if size > _UNKNOWN_DEEP:
        yield f"Loudness swells by {size:.0%} at {rate:.1f} {heard.unit}, which is none of the rates."


def _is_a_hint(kind: str, found: Comb, searched: float) -> bool:
    """Lines that noise seldom makes, though fewer or fainter than a damage would be believed for."""
    if found.log_chance + searched > _HINT or found.depth < _HINT_DEEP[kind]:
        return False
    several = 1 in found.multiples or len(found.multiples) + found.sidebands >= 2
    return several or found.depth > _HINT_OF_ONE * _HINT_DEEP[kind]


def _stranger(kind: str, best: Comb, heard: Heard) -> tuple[float, float]:
    """Size and rate of the strongest swelling in a comb's own band that it does not explain."""
    spectrum = next(s for s in heard.spectra if (s.low, s.high) == (best.low, best.high))
    top = len(spectrum.above) * spectrum.step
    cage = heard.rates[CAGE]
    known = comb.explained(best, heard.turns, cage, top)
    if kind == BALL:  # a ball knocks while it is loaded, so its knocks come and go with the cage
        known += (cage, 2 * cage, 3 * cage)
    return _unknown(spectrum, heard.turns, known)


def _unknown(spectrum: LineSpectrum, turns: float, known: tuple[float, ...] = ()) -> tuple[float, float]:
    """Size and rate of the strongest swelling that is neither the shaft's nor hum."""
    places = np.arange(len(spectrum.above)) * spectrum.step
    stands = (spectrum.log_chance + log(len(places)) < comb.SURE) & ~comb.foreign(
        spectrum, turns, known, _BLURRED
    )
    size = np.where(stands, spectrum.size, 0.0)
    at = int(np.argmax(size))
    return float(size[at]), float(places[at])


def _confidence(best: Comb, heard: Heard) -> float:
    """Between 0.5 and 0.98: more lines, deeper swelling, a shaft that is heard."""
    lines = min(1.0, (len(best.multiples) + best.sidebands) / 5)
    deep = 1 - exp(-best.depth / 0.5)
    return round(0.5 + 0.48 * lines * deep * (1.0 if heard.turns_heard else 0.7), 2)


_NAMES = {OUTER: "outer ring", INNER: "inner ring", BALL: "balls", CAGE: "cage"}


def _in_words(kind: str, found: Comb, unit: str) -> str:
    beside = {INNER: "the shaft's", BALL: "the cage's"}.get(kind, "")
    sides = f", {found.sidebands} lines beside them at {beside} rate" if beside and found.sidebands else ""
    multiples = ", ".join(str(m) for m in found.multiples)
    return (
        f"From {found.low:.0f} to {found.high:.0f} Hz loudness swells by {found.depth:.0%} at "
        f"{found.rate:.2f} {unit}, times {multiples}{sides}; {_NAMES[kind]}: {found.expected:.2f} {unit}."
    )


def _about_speed(heard: Heard) -> tuple[str, ...]:
    if heard.unit != "Hz":
        return ()
    if heard.turns_heard:
        return (f"The shaft is heard to turn at {60 * heard.turns:.0f} rpm.",)
    return (f"The shaft's own turning is not heard; {60 * heard.turns:.0f} rpm is believed as given.",)


def shown(heard: Heard, verdict: str) -> LineSpectrum:
    """The spectrum to draw beside a verdict.

    Parameters
    ----------
    heard : Heard
        What was heard, rates in [Hz] or times a turn [1].
    verdict : str
        The verdict [-].

    Returns
    -------
    LineSpectrum
        Of the band in which the named part's lines stand, else of the whole.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> one = LineSpectrum.of((0.0, 9.0), 1.0, np.ones(9), np.ones(9), 1)
    >>> shown(Heard(30.0, False, {}, (one,), {}, 0.9, 0.0), "sound") is one
    True
    """
    found = heard.combs.get(verdict)
    if found is None:
        return heard.spectra[0]
    return next(s for s in heard.spectra if (s.low, s.high) == (found.low, found.high))
