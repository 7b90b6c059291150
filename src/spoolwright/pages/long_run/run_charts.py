"""Temperature through the run and after it, and the pull as the line comes tight, for every state at once."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.run_heat import TOUCH, RunHeat
from spoolwright.judgement.run_judder import RunJudder
from spoolwright.judgement.run_test import RunTest
from spoolwright.judgement.run_words import between
from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Chart, Curve, Rule, Story, Zone

FREEZING = 273.15
POINTS = 60
HEADROOM = 1.07
"""Room above the highest strip for its name."""
WATCH_AT_LEAST, WATCH_AT_MOST = 120.0, 3600.0
"""How long after the run the second chart goes on [s]."""

Tests = Sequence[tuple[str, RunTest]]
"""The name of each state, and the run against it."""


def heating(tests: Tests, system: str) -> Chart:
    """The hottest face against the time of the run, with what the discs stand as a strip."""
    curves = [_curve(words, _heat(test), 0, _heat(test).run_end + 1) for words, test in tests]
    story = Story(
        f"Hottest face of the drag through the run. {_ends(tests, system)}",
        _reaches(tests),
        zones=_limits(tests, system),
    )
    top = max(max(curve.high) for curve in curves)
    top = max(top, *(zone.high for zone in story.zones)) * HEADROOM
    level = Along("temperature", "hottest face", (FREEZING, top))
    return charts.states(Along("time", "time of the run"), level, curves, story, system=system)


def cooling(tests: Tests, system: str) -> Chart:
    """The hottest face after the run, until it may be touched."""
    longest = max(_heat(test).wait_touch.high for _, test in tests)
    until = float(np.clip(1.15 * longest, WATCH_AT_LEAST, WATCH_AT_MOST))
    curves = []
    for words, test in tests:
        heat = _heat(test)
        since = heat.time - heat.time[heat.run_end]
        last = int(np.searchsorted(since, until, side="right")) + 1
        curves.append(
            _curve(words, heat, heat.run_end, last, from_=float(heat.time[heat.run_end]), until=until)
        )
    touch = quantities.show_stated(TOUCH, "temperature", system)
    story = Story(
        f"Hottest face of the drag after the run, {touch} marked.",
        f"Below {touch} a hand may hold the metal for some minutes (ISO 13732-1, from memory). From outside "
        "nobody sees how hot it is within.",
        (Rule("y", TOUCH, touch),),
    )
    top = max(max(curve.high) for curve in curves) + 8
    level = Along("temperature", "hottest face", (FREEZING, top))
    return charts.states(Along("time", "time after the run"), level, curves, story, system=system)


def tightening(tests: Tests, system: str) -> Chart:
    """The pull that the line feels as it comes tight, for the middle of each state."""
    until = min(float(test.judder.time[-1]) for _, test in tests if test.judder)
    curves = []
    for words, test in tests:
        assert test.judder is not None
        at = np.linspace(0.0, until, 4 * POINTS)
        curves.append(Curve(words, at.tolist(), np.interp(at, test.judder.time, test.judder.pull).tolist()))
    told = tests[0][1].judder
    assert told is not None
    top = max(told.static.middle, *(max(curve.middle) for curve in curves))
    story = Story(
        f"Pull of the line as it comes tight and the drag starts. {_starts(tests, system)}",
        "Drawn for the middle of what is not known; other line, other grease or another rod change it.",
        _lets_go(told, top),
    )
    level = Along("force", "pull", (0.0, 1.12 * top))
    return charts.states(Along("time", "time"), level, curves, story, system=system)


def _lets_go(told: RunJudder, top: float) -> tuple[Rule, ...]:
    """Where the first state lets go and where it slips; one name for both where they lie close."""
    apart = told.static.middle - told.running.middle > 0.1 * top
    above, below = ("lets go", "slips") if apart else ("lets go, then slips", "")
    return Rule("y", told.static.middle, above), Rule("y", told.running.middle, below)


def _heat(test: RunTest) -> RunHeat:
    assert test.heat is not None
    return test.heat


def _curve(
    words: str, heat: RunHeat, start: int, stop: int, *, from_: float = 0.0, until: float | None = None
) -> Curve:
    """One state's curve, at so many moments that lie closer together where it begins."""
    time = heat.time[start:stop] - from_
    end = until if until is not None else float(time[-1])
    at = end * np.linspace(0.0, 1.0, POINTS) ** 1.5
    middle, low, high = (
        np.interp(at, time, v[start:stop]).tolist() for v in (heat.middle, heat.low, heat.high)
    )
    return Curve(words, at.tolist(), middle, low, high)


def _limits(tests: Tests, system: str) -> tuple[Zone, ...]:
    """What the discs of each material stand, once each."""
    found = {}
    for _, test in tests:
        heat = _heat(test)
        stands = quantities.show_stated(heat.limit.middle, "temperature", system).split(".")[0].split()[0]
        unit = quantities.display_unit("temperature", system)
        low, high = heat.limit.low, max(heat.limit.high, heat.limit.low + 1.5)
        found[heat.limit_material] = Zone(low, high, f"{heat.limit_material}, {stands} {unit}")
    return tuple(found.values())


def _ends(tests: Tests, system: str) -> str:
    return (
        "; ".join(f"{words}: {between(_heat(test).after_run, system)} at its end" for words, test in tests)
        + "."
    )


def _reaches(tests: Tests) -> str:
    shares = [(words, _heat(test).chance) for words, test in tests]
    said = (
        [f"{words}, {_often(share)}" for words, share in shares] if len(tests) > 1 else [_often(shares[0][1])]
    )
    return (
        f"The strip is what the discs stand. Such runs end above it: {'; '.join(said)}. Scorched discs do "
        "not come back: they are renewed."
    )


def _often(share: float) -> str:
    if share < 0.005:
        return "none"
    return "all" if share > 0.995 else f"{100 * share:.0f} of a hundred"


def _starts(tests: Tests, system: str) -> str:
    said = []
    for words, test in tests:
        assert test.judder is not None
        said.append(f"{words}: up to {between(test.judder.start_up_peak, system)}")
    return "; ".join(said) + "."
