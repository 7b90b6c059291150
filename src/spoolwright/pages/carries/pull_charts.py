"""The pull as the line goes and as the drag is turned, for every state of the subject on one chart."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from spoolwright import quantities
from spoolwright.judgement import drag_train
from spoolwright.judgement.prediction import Prediction
from spoolwright.mechanics import spool
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Chart, Curve, Rule, Story
from spoolwright.papers.figures import Span, shown

SHARES = (0.05, 0.08, 0.12, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)


def predicted(subject: Subject, state: State) -> Prediction:
    return kept_known.prediction(subject.sheet, subject.taken, state.works, subject.system, subject.learned)


def emptying(subject: Subject, fill: float) -> Chart | None:
    """Pull against the line that is left, the drag hard on: torque over the radius where the line leaves."""
    curves = [curve for state in subject.states if (curve := _emptying(subject, state))]
    if not curves:
        return None
    left = curves[0].x[-1] * fill
    story = Story(_emptying_words(subject, curves), _grows(subject, curves[0], fill), (_now(left, fill),))
    along, pull = Along("line_length", "line left on the spool"), Along("force", "pull")
    return charts.states(along, pull, curves, story, system=subject.system)


def _emptying(subject: Subject, state: State) -> Curve | None:
    values = predicted(subject, state).values
    torque, capacity = values.get("drag_torque"), values.get("line_capacity")
    if torque is None or capacity is None:
        return None
    radii = [drag_train.radius_at_fill(subject.sheet, share) for share in SHARES]
    # The torque is that on the spool already, so no ratio of gears comes into it again.
    middle, low, high = (
        [float(spool.line_pull(end, 1.0, r)) for r in radii]
        for end in (torque.middle, torque.low, torque.high)
    )
    return Curve(state.words, [capacity.middle * share for share in SHARES], middle, low, high)


def _emptying_words(subject: Subject, curves: Sequence[Curve]) -> str:
    ends = (
        f"{curve.words}: {_pull(curve, -1, subject)} at a full spool, {_pull(curve, 0, subject)} near its end"
        for curve in curves
    )
    return f"Pull against line left on the spool. {'; '.join(ends)}."


def _pull(curve: Curve, k: int, subject: Subject) -> str:
    span = curve.span(k, "force")
    assert span is not None
    return shown(span, subject.system)


def _grows(subject: Subject, curve: Curve, fill: float) -> str:
    radius = drag_train.radius_at_fill(subject.sheet, fill)
    growth = subject.sheet.spool.full_radius / radius - 1
    whole = curve.middle[0] / curve.middle[-1] - 1
    here = f" At {100 * fill:.0f} % of the line it is {100 * growth:.0f} % more." if fill < 1 else ""
    return (
        f"With the drag untouched the pull grows by {100 * whole:.0f} % from a full spool to the last of its "
        f"line.{here} Ease the drag as a fish takes line."
    )


def _now(left: float, fill: float) -> Rule:
    return Rule("x", left, f"{100 * fill:.0f} %" if fill < 1 else "full")


def turning(subject: Subject, turns: float | None, radius: float) -> Chart | None:
    """Pull against the way of the star, knob or lever, with the line leaving at this radius."""
    setting = subject.setting
    curves = [curve for state in subject.states if (curve := _turning(subject, state, radius))]
    if not curves:
        return None
    where = quantities.show(radius, "length", subject.system)
    whole = curves[0].middle[-1] - curves[0].middle[0]
    step = "A tenth of the lever’s way" if setting.is_lever else f"Each turn of the {setting.control}"
    adds = quantities.show(whole / (10 if setting.is_lever else setting.whole), "force", subject.system)
    says = f"{step} adds about {adds} with the line leaving at {where}. Check a setting with a scale."
    per = setting.whole if setting.is_lever else 1.0
    rules = (Rule("x", turns / per, "here"),) if turns is not None and turns < setting.whole else ()
    story = Story(f"Pull against the way of the {setting.control}, line leaving at {where}.", says, rules)
    along = Along("ratio", setting.along)
    return charts.states(along, Along("force", "pull"), curves, story, system=subject.system)


def _turning(subject: Subject, state: State, radius: float) -> Curve | None:
    rows = predicted(subject, state).star_turns
    if len(rows) < 2:
        return None
    share = subject.sheet.spool.full_radius / radius
    per = subject.setting.whole if subject.setting.is_lever else 1.0
    return Curve(
        state.words,
        [row.turns / per for row in rows],
        [row.pull.middle * share for row in rows],
        [row.pull.low * share for row in rows],
        [row.pull.high * share for row in rows],
    )


def at_turns(subject: Subject, state: State, turns: float, radius: float) -> Span | None:
    """The running pull with the drag turned so far, read between the rows of the prediction."""
    curve = _turning(subject, state, radius)
    if curve is None:
        return None
    at = turns / subject.setting.whole if subject.setting.is_lever else turns
    middle, low, high = (float(np.interp(at, curve.x, end)) for end in (curve.middle, curve.low, curve.high))
    return Span(middle, low, high, "force")
