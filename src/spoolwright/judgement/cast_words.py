"""A cast in plain words: how far, how the brake stands, what would change it and what would not."""

from __future__ import annotations

from spoolwright.judgement.cast_case import CastCase
from spoolwright.judgement.cast_compare import Compared
from spoolwright.judgement.cast_matters import Change, Matters
from spoolwright.judgement.prediction import Predicted
from spoolwright.quantities import DIMENSIONS, display_unit, show, show_interval

NEXT_TO_NOTHING, LITTLE = 0.01, 0.03
"""Shares of the distance below which a change is called next to nothing, and a little: judgement priors."""

CLEAN = 2.0
"""Drag of the bearings over that of sound ones up to which they are called clean: judgement prior."""

HARDLY = 0.02
"""Slack [m] that nobody would see."""

TAPE = 0.05
"""Metres or yards that no tape along a field would show."""


def told(case: CastCase, system: str = "metric") -> tuple[str, ...]:
    """How far it goes, how the brake stands, and how often the spool would over-run.

    Parameters
    ----------
    case : CastCase
        The cast **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**; only why not, where the cast has no meaning.

    Source
    ------
    Our own words for mechanics.cast.

    Examples
    --------
    >>> from spoolwright.judgement.cast_case import cast_case
    >>> from spoolwright.judgement.throw import Throw
    >>> from spoolwright.sheets import reel_sheet
    >>> told(cast_case(reel_sheet.load("brekkas-9-10"), throw=Throw(0.02, 20.0)))[0][:30]
    'A fly is cast by the weight of'
    """
    if case.why_not:
        return (case.why_not,)
    distance, time = case.values["distance"], case.values["flight_time"]
    speed = show(case.throw.speed, "speed", system)
    payload = show(case.throw.payload, "mass", system)
    first = (
        f"{payload} thrown at {speed} goes {length_words(distance.middle, system)}; nine casts in ten go "
        f"{show_interval(distance.low, distance.high, 'line_length', system)}. It is in the air for "
        f"{show(time.middle, 'time', system)}."
    )
    if case.is_fixed_spool:
        return (first, _STANDS_STILL)
    return (first, *_brake(case, system), *_over_runs(case, system))


_STANDS_STILL = (
    "The spool stands still and the line peels off over its lip: nothing turns, so nothing can over-run, and "
    "no bearing or brake of the reel has a say. The line, the lip and how full the spool is decide."
)


def length_words(value: float, system: str = "metric") -> str:
    """A length of line no finer than anybody could tell: to a tenth of a metre or yard, long ones to one.

    Parameters
    ----------
    value : float
        Length **[m]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        Such as "0.4 m" or "163 m" **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> length_words(0.0473), length_words(0.5006), length_words(163.4), length_words(163.4, "imperial")
    ('less than 0.1 m', '0.5 m', '163 m', '179 yd')
    """
    one = DIMENSIONS["line_length"].unit(display_unit("line_length", system))
    number = value / float(one.factor)
    if 0 < abs(number) < TAPE:
        return f"less than 0.1 {one.name}"
    return f"{number:.0f} {one.name}" if abs(number) >= 100 else f"{round(number, 1) + 0.0:g} {one.name}"


def _brake(case: CastCase, system: str) -> tuple[str, ...]:
    slack = float(case.middle.summary.peak_slack)
    runs = f"the spool runs {length_words(slack, system)} ahead of the line at the most"
    if case.throw.brake.constant is not None:
        set_at = show(case.throw.brake.constant, "viscous_drag", system)
        return (f"With the measured brake of {set_at} {runs}, in the middle cast.",)
    if case.share is None:
        return (f"This reel has no brake of its own: a thumb has to hold the spool. If it is quick {runs}.",)
    if not case.throw.brake.is_searched:
        return (f"With the brake at {share_words(case)} {runs}, in the middle cast.",)
    if case.share == 0.0:
        return (f"No brake is needed: without any, {runs}.",)
    if slack > (case.throw.brake.slack or case.lip_slack / 2) * 1.02:
        return (f"Even with all of its brake {runs}: a thumb has to help.",)
    return (f"With the brake set for it, at {share_words(case)}, {runs}, in the middle cast.",)


def share_words(case: CastCase) -> str:
    """How the brake is set, as a hand would set it.

    Parameters
    ----------
    case : CastCase
        A cast of a reel that has a brake **[SI]**.

    Returns
    -------
    str
        Such as "34 % of its hardest (0.7 of its 2 blocks)" **[-]**.

    Source
    ------
    Our own words.
    """
    share = case.share or 0.0
    said = f"{_percent(share)} of its hardest"
    blocks = case.inputs.brakes.blocks if case.inputs is not None else 0
    only_blocks = case.inputs is not None and blocks > 0 and case.inputs.brakes.magnets == 0
    return f"{said} ({share * blocks:.1f} of its {blocks} blocks)" if only_blocks else said


def _over_runs(case: CastCase, system: str) -> tuple[str, ...]:
    at = length_words(case.lip_slack, system)
    where = f"At {at} of slack the loose turns would stand as high as the spool's lip"
    if case.over_runs < 0.005:
        return (f"{where}: none of the casts drawn comes to it.",)
    passing = f"{_percent(case.over_runs)} of the casts drawn pass it"
    return (
        f"{where} (a guess at where an over-run begins): {passing}, and there the thumb has to be quicker.",
    )


def matters_told(case: CastCase, matters: Matters | None, system: str = "metric") -> tuple[str, ...]:
    """What would change this cast and what would not, from this reel's own numbers.

    Parameters
    ----------
    case : CastCase
        The cast **[SI]**.
    matters : Matters or None
        What would change it **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**, the bearings first, because they are what is asked for.

    Source
    ------
    Our own words for mechanics.cast.
    """
    if matters is None:
        return ()
    found = [change for key in _ORDER if (change := matters.of(key)) is not None]
    said = [_SAID.get(change.key, _plain)(change, case, matters, system) for change in found]
    ideal = (
        f"With a perfect thumb and no brake this throw would go {length_words(matters.ideal, system)}: "
        "that is as much as brake and bearings together can win."
    )
    return (*said, ideal)


_ORDER = (
    "bearings freer",
    "bearings gummed",
    "spool lighter",
    "line thinner",
    "level wind out",
    "brake harder",
)


def _plain(change: Change, case: CastCase, matters: Matters, system: str) -> str:
    what = f"{change.what[0].upper()}{change.what[1:]}"
    gain = _of_all(change.like_for_like, matters, system)
    if change.gain_again is None or abs(change.more_slack) <= HARDLY:
        return f"{what}: {gain}."
    slack = (
        f"{length_words(abs(change.more_slack), system)} {'more' if change.more_slack > 0 else 'less'} slack"
    )
    untouched = f"{_signed(change.gain, system)} and {slack}"
    return f"{what}: {gain} with the brake set again; untouched it is {untouched}."


def _gummed(change: Change, case: CastCase, matters: Matters, system: str) -> str:
    cost = _of_all(change.gain, matters, system)
    sound = case.inputs is None or case.inputs.gum < CLEAN
    which = "gummed, ten times the drag" if sound else "ten times as stiff as these"
    said = f"Bearings {which}: {cost} with the brake as it stands"
    if change.gain_again is None or change.again is None:
        return f"{said}."
    back = "taken out" if change.again == 0.0 else f"set back to {_percent(change.again)}"
    return f"{said}, {_signed(change.gain_again, system)} with the brake {back} for the slack of before."


def _harder(change: Change, case: CastCase, matters: Matters, system: str) -> str:
    less = length_words(abs(change.more_slack), system)
    return f"The brake set 30 % harder: {_of_all(change.gain, matters, system)}, and {less} less slack."


def _freer(change: Change, case: CastCase, matters: Matters, system: str) -> str:
    clean = case.inputs is None or case.inputs.gum < CLEAN
    which = "bearings that are already clean" if clean else "these bearings, which drag more than sound ones,"
    worth = change.like_for_like / matters.distance
    much = "next to nothing" if abs(worth) < NEXT_TO_NOTHING else "a little" if worth < LITTLE else "much"
    said = f"Halving the drag of {which} {'adds' if worth > -1e-4 else 'takes away'} {much}"
    said = f"{said}: {_of_all(change.like_for_like, matters, system)}"
    if change.more_slack <= HARDLY:
        return f"{said}."
    further = f"the spool runs {length_words(change.more_slack, system)} further ahead"
    if change.gain_again is None or change.again is None:
        return f"{said}, and {further}: more for the thumb to hold."
    up = f"from {_percent(matters.share or 0)} to {_percent(change.again)} of its hardest"
    return (
        f"{said} with the brake up {up}. With "
        f"the brake untouched it is {_signed(change.gain, system)}, but {further}: over-runs get worse."
    )


_SAID = {"bearings freer": _freer, "bearings gummed": _gummed, "brake harder": _harder}


def _of_all(gain: float, matters: Matters, system: str) -> str:
    if abs(gain) < 5e-4 * matters.distance:
        return _signed(gain, system)
    whole = length_words(matters.distance, system)
    return f"{_signed(gain, system)} ({_percent(abs(gain) / matters.distance, 1)} of {whole})"


def _signed(value: float, system: str) -> str:
    words = length_words(abs(value), system)
    return words if words.startswith("less") else f"{'+' if value >= 0 else '−'}{words}"


def compared_told(found: Compared, title: str, system: str = "metric") -> tuple[str, ...]:
    """What some works would change in this cast.

    Parameters
    ----------
    found : Compared
        Works against none **[SI]**.
    title : str
        What the works are called together **[-]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Our own words for mechanics.cast.
    """
    before = found.untouched.values["distance"].middle - found.gain.middle
    slack = found.more_slack.middle
    ahead = (
        f"the spool runs {length_words(abs(slack), system)} {'further' if slack > 0 else 'less far'} ahead"
    )
    if found.gain_again is None or found.again is None or abs(slack) <= HARDLY:
        more = f"; {ahead}" if abs(slack) > HARDLY else ""
        return (f"{title}: {_verdict(found.gain, before)}, {gain_words(found.gain, system)}{more}.",)
    return (
        f"{title}: {_verdict(found.gain_again, before)}, {gain_words(found.gain_again, system)}, with the "
        f"brake set again for the slack of before, at {share_words(found.again)}.",
        f"With the brake untouched: {gain_words(found.gain, system)}, and {ahead}.",
    )


def _percent(share: float, places: int = 0) -> str:
    return f"{100 * share:.{places}f} %"


def _verdict(gain: Predicted, distance: float) -> str:
    worth = abs(gain.middle) / max(distance, 1e-9)
    if worth < NEXT_TO_NOTHING:
        return "next to no change in distance"
    much = "a little" if worth < LITTLE else "clearly"
    return f"{much} {'farther' if gain.middle > 0 else 'shorter'}"


def gain_words(gain: Predicted, system: str = "metric") -> str:
    """A gain or loss of distance with its interval.

    Parameters
    ----------
    gain : Predicted
        Difference **[m]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        Such as "+0.4 m (-0.1 m to +0.9 m)" **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> gain_words(Predicted("more", 0.5, -0.25, 1.0, 0.3, "line_length"))
    '+0.5 m (−0.2 to +1.0 m)'
    >>> gain_words(Predicted("more", 0.0, -0.01, 0.01, 0.01, "line_length"))
    'no change that a tape would show'
    """
    one = DIMENSIONS["line_length"].unit(display_unit("line_length", system))
    low, middle, high = (value / float(one.factor) for value in (gain.low, gain.middle, gain.high))
    if max(abs(low), abs(high)) < TAPE:
        return "no change that a tape would show"
    return f"{_with_sign(middle)} {one.name} ({_with_sign(low)} to {_with_sign(high)} {one.name})"


def _with_sign(number: float) -> str:
    said = f"{abs(number):.1f}"
    return said if float(said) == 0 else f"{'+' if number > 0 else '−'}{said}"
