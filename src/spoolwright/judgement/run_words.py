"""The run test in words for an angler, in the reader's units, every number with its spread."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.run_heat import TOUCH, WATCHED, RunHeat
from spoolwright.judgement.run_judder import RunJudder
from spoolwright.judgement.run_test import RunTest
from spoolwright.mechanics.heat import ROOM

HOT_CAUTION = (
    "After a long run the discs, the star and the plates beside them can burn. Do not touch or open the drag "
    "until it is cool to the back of a hand held near, and do not pour water on it: steam scalds and hot "
    "discs warp. Do not breathe the smoke of a scorched drag."
)
LOADED_CAUTION = (
    "Judder is tried under load, and line whips back: pull in a straight line, eyes covered, nobody in line "
    "with it."
)


def heat_words(test: RunTest, system: str = "metric") -> tuple[str, ...]:
    """What the run does to the drag, sentence by sentence.

    Parameters
    ----------
    test : RunTest
        What run_test found **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**; the reason why not, where the run has no meaning.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> heat_words(RunTest(fish=None, works=(), why_not="No drag."))
    ('No drag.',)
    """
    if test.heat is None or test.pull is None:
        return (test.why_not,)
    heat = test.heat
    return (_made(test, heat, system), _limit(heat, system), _fade(heat), _wait(heat, system))


def _made(test: RunTest, heat: RunHeat, system: str) -> str:
    assert test.pull is not None
    way = quantities.show_stated(test.way, "line_length", system)
    pull = quantities.show(test.pull.middle, "force", system)
    time = quantities.show_stated(float(heat.time[heat.run_end]), "time", system)
    made = quantities.show(heat.energy.middle, "energy", system)
    more = test.starts_at / test.falls_to - 1
    grows = f", growing by {_percent(more)} as the spool empties," if more > 0.005 else ""
    from_ = quantities.show_stated(ROOM, "temperature", system)
    face = f"between {heat.hottest.replace(' on ', ' and ')}" if " on " in heat.hottest else heat.hottest
    return (
        f"{way} of line in {time} against {pull}{'' if test.fish.recorded else grows} makes {made} of heat. "
        f"The hottest face, {face}, comes to {between(heat.after_run, system)} from {from_}."
    )


def _limit(heat: RunHeat, system: str) -> str:
    is_range = heat.limit.high > heat.limit.low + 0.5
    stands = between(heat.limit, system) if is_range else _one(heat.limit, system)
    said = f"Its {heat.limit_material} stands {stands}: "
    if heat.time_to_limit is not None:
        return (
            f"{said}reached {between(heat.time_to_limit, system)} into the run, {_in_hundred(heat.chance)}."
        )
    if heat.chance >= 0.05:
        return f"{said}reached before the end {_in_hundred(heat.chance)}."
    return f"{said}not reached."


def _fade(heat: RunHeat) -> str:
    lost = heat.pull_lost
    if lost.high < 0.02:
        return "The pull hardly fades: less than 2 % is lost."
    ends = f"{_percent(lost.low)} to {_percent(lost.high)}"
    return f"Fade takes {_percent(lost.middle)} of the pull by the end of the run ({ends})."


def _wait(heat: RunHeat, system: str) -> str:
    touch = quantities.show_stated(TOUCH, "temperature", system)
    cool = f"Leave it {waiting(heat.wait_touch)} before it is opened: until then a disc may be over {touch}."
    if heat.wait_touch.high <= 0:
        cool = f"No disc is over {touch} when the run ends."
    if heat.wait_again is None:
        return f"{cool} Another such run is more than these discs stand, even from cold."
    if heat.wait_again.high <= 0:
        return f"{cool} The same run may follow at once."
    return f"{cool} Wait {waiting(heat.wait_again)} before the same run again."


def judder_words(test: RunTest, system: str = "metric") -> tuple[str, ...]:
    """How the drag starts and whether it judders, sentence by sentence.

    Parameters
    ----------
    test : RunTest
        What run_test found **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**; the reason why not, where the run has no meaning.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> judder_words(RunTest(fish=None, works=(), why_not="No drag."))
    ('No drag.',)
    """
    if test.judder is None:
        return (test.why_not,)
    told = test.judder
    out = quantities.show_stated(test.fish.line_out, "line_length", system)
    line = f"{test.fish.material.name} of {quantities.show_stated(test.fish.diameter, 'length', system)}"
    start = (
        f"With {out} of {line} out the drag lets go at {between(told.static, system)} and slips at "
        f"{between(told.running, system)}; as it starts the line feels up to "
        f"{between(told.start_up_peak, system)}."
    )
    return (start, _swing(told, system), _smooth(told, system))


def _swing(told: RunJudder, system: str) -> str:
    if told.frequency is None:
        return f"At this speed it then runs smooth {_in_hundred(told.runs_smooth)}."
    low, high = (quantities.show(end.middle, "force", system) for end in (told.lowest, told.highest))
    often = told.frequency
    said = (
        f"It then judders between {low} and {high}, about {often.middle:.1f} times a second "
        f"({often.low:.1f} to {often.high:.1f}), {_in_hundred(1 - told.runs_smooth)}."
    )
    return f"{said} The line goes slack in between." if told.slack > 0.5 else said


def _smooth(told: RunJudder, system: str) -> str:
    return (
        f"It runs smooth where line is taken faster than {between(told.smooth_above, system)}; with less "
        "line out it judders quicker and runs smooth sooner."
    )


def heat_in_short(test: RunTest, system: str = "metric") -> str:
    """What the run does to the drag in one sentence, to set beside another state of the reel.

    Parameters
    ----------
    test : RunTest
        What run_test found **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        A sentence **[-]**; the reason why not, where the run has no meaning.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> heat_in_short(RunTest(fish=None, works=(), why_not="No drag."))
    'No drag.'
    """
    if test.heat is None or test.pull is None:
        return test.why_not
    heat = test.heat
    pull = quantities.show(test.pull.middle, "force", system)
    wait = "no wait" if heat.wait_touch.high <= 0 else f"a wait of {waiting(heat.wait_touch)}"
    lost = heat.pull_lost
    fades = f"{_percent(lost.middle)} of the pull fades ({_percent(lost.low)} to {_percent(lost.high)})"
    return (
        f"Against {pull} its hottest face comes to {between(heat.after_run, system)}; its "
        f"{heat.limit_material} is at its limit {_in_hundred(heat.chance)}; {fades}; {wait} before it is "
        "opened."
    )


def judder_in_short(test: RunTest, system: str = "metric") -> str:
    """How the drag starts in one sentence, to set beside another state of the reel.

    Parameters
    ----------
    test : RunTest
        What run_test found **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        A sentence **[-]**; the reason why not, where the run has no meaning.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> judder_in_short(RunTest(fish=None, works=(), why_not="No drag."))
    'No drag.'
    """
    if test.judder is None:
        return test.why_not
    told = test.judder
    peak, slips = between(told.start_up_peak, system), quantities.show(told.running.middle, "force", system)
    smooth = f"runs smooth {_in_hundred(told.runs_smooth)}"
    return f"The line feels up to {peak} as it starts and {slips} as it slips; it {smooth}."


def between(value: Predicted, system: str) -> str:
    """The middle, and in brackets what 90 of a hundred draws give.

    Parameters
    ----------
    value : Predicted
        A value with its band **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        Text with units **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> between(Predicted("pull", 20.0, 18.0, 23.0, 1.0, "force"), "metric")
    '2.04 kg (1.84 to 2.35 kg)'
    """
    ends = quantities.show_interval(value.low, value.high, value.dimension, system)
    return f"{_one(value, system)} ({ends})"


def _one(value: Predicted, system: str) -> str:
    if value.dimension != "temperature":
        return quantities.show(value.middle, value.dimension, system)
    unit = quantities.display_unit("temperature", system)
    return f"{float(quantities.show(value.middle, 'temperature', system).split()[0]):.0f} {unit}"


def waiting(value: Predicted) -> str:
    """A wait in minutes, or seconds where it is short.

    Parameters
    ----------
    value : Predicted
        A wait with its band **[s]**.

    Returns
    -------
    str
        Text with units **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> waiting(Predicted("wait", 300.0, 200.0, 500.0, 60.0, "time"))
    'about 5.0 min (3.3 to 8.3 min)'
    """
    if value.low >= WATCHED:
        return f"more than {WATCHED / 3600:g} h"
    unit = "min" if value.high > 100 else "s"
    middle = quantities.show(value.middle, "time", unit=unit)
    number = float(middle.split()[0])
    short = f"{number:.0f}" if unit == "s" or number >= 10 else f"{number:.1f}"
    ends = quantities.show_interval(value.low, value.high, "time", unit=unit)
    more = " or more" if value.high >= WATCHED else ""
    return f"about {short} {unit} ({ends}{more})"


def _in_hundred(share: float) -> str:
    return f"in {100 * share:.0f} of a hundred cases drawn"


def _percent(share: float) -> str:
    return f"{100 * share:.0f} %"
