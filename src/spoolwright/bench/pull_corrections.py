"""From what the gauge shows to what the line pulls: its zero and drift, a pulley on the way, its angle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import cos, degrees, hypot, pi, sin, sqrt

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.trace import PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

WIDEST_ANGLE = pi / 3
"""Angle of the line beyond which a pull says nothing worth having [rad]."""

ANGLE_UNSURE = 3 * pi / 180
"""Standard uncertainty of an angle judged beside a protractor [rad]: judgement prior."""

LOSSIEST_PULLEY = 3.0
"""A pulley that takes more than this factor is no pulley [-]: judgement prior."""


@dataclass(frozen=True)
class Pulley:
    """A pulley on the line's way, tried both ways with one weight.

    `factor` is the pull on the gauge over the pull in the line while line is given [-]; `weight` is what
    the weight weighs by this gauge, friction taken out [N].
    """

    factor: Measured
    weight: Measured


@dataclass(frozen=True)
class LineWay:
    """What lies between the spool and the gauge; what is not there stays None.

    angle: between the line and straight off the spool, square to its axis [rad]. pulley: factor of a pulley
    or ring [-]. zero_before, zero_after: what the gauge shows with the line slack [N].
    """

    angle: Measured | None = None
    pulley: Measured | None = None
    zero_before: Measured | None = None
    zero_after: Measured | None = None

    @property
    def straight(self) -> bool:
        """Whether there is nothing to correct."""
        return not (self.angle or self.pulley or self.zero_before or self.zero_after)

    @property
    def factor(self) -> Measured:
        """Pull that turns the spool over the pull that the gauge feels, with its standard uncertainty [1]."""
        askew = angle_factor(self.angle) if self.angle else Measured(1.0, 0.0, "ratio")
        way = self.pulley or Measured(1.0, 0.0, "ratio")
        value = askew.value / way.value
        share = hypot(askew.uncertainty / askew.value, way.uncertainty / way.value)
        return Measured(value, value * share, "ratio")


def angle_factor(angle: Measured) -> Measured:
    """The part of a pull that turns the spool where the line leaves askew.

    Parameters
    ----------
    angle : Measured
        Angle between the line and straight off the spool, with its standard uncertainty [rad], 0 to 60 deg.

    Returns
    -------
    Measured
        Cosine with its standard uncertainty [1].

    Raises
    ------
    Unreadable
        An angle beyond 60 deg.

    Notes
    -----
    cos(a) (1 - u^2 / 2); u(cos)^2 = sin(a)^2 u^2 + cos(a)^2 u^4 / 2: near nothing the second term is all
    there is, because the slope of the cosine is zero there.

    Source
    ------
    Statics; JCGM 100:2008, 5.1.2 with the note on higher orders.

    Examples
    --------
    >>> round(angle_factor(Measured(0.5236, 0.02, "angle")).value, 4)
    0.8659
    """
    a, u = abs(angle.value), angle.uncertainty
    if not a <= WIDEST_ANGLE:
        raise Unreadable(
            f"the line leaves at {degrees(a):.0f} deg", "line angle", f"0 to {degrees(WIDEST_ANGLE):.0f} deg"
        )
    spread = sqrt((sin(a) * u) ** 2 + (cos(a) * u**2) ** 2 / 2)
    return Measured(cos(a) * (1 - u**2 / 2), spread, "ratio")


def pulley(up: Measured, down: Measured) -> Pulley:
    """The friction of a pulley from one weight that is lifted and let down over it.

    Parameters
    ----------
    up : Measured
        Pull on the gauge while the weight rises steadily [N], above zero.
    down : Measured
        Pull on the gauge while it sinks steadily [N], above zero.

    Returns
    -------
    Pulley
        Factor [1] and the weight free of friction [N].

    Raises
    ------
    Unreadable
        Less pull going up than down, beyond what their uncertainty explains; a pulley that holds fast.

    Notes
    -----
    up = k W, down = W / k: k = sqrt(up / down), W = sqrt(up down), the geometric mean. The scale of the
    gauge cancels in k, which for a line over a bar would be exp(mu beta), Euler's rope friction.

    Source
    ------
    Euler and Eytelwein's rope friction, any statics text; JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> tried = pulley(Measured(52.0, 0.1, "force"), Measured(48.077, 0.1, "force"))
    >>> round(tried.factor.value, 3), round(tried.weight.value, 1)
    (1.04, 50.0)
    """
    if not (up.value > 0 and down.value > 0):
        raise Unreadable("a weight pulls with more than nothing both ways", "pulley", "two pulls above zero")
    unsure = hypot(up.uncertainty / up.value, down.uncertainty / down.value)
    value = up.value / down.value
    if value < 1 - 2 * unsure:
        raise Unreadable("letting down pulled harder than lifting", "pulley", "the pull up first, then down")
    if value > LOSSIEST_PULLEY**2:
        raise Unreadable("the pulley holds fast", "pulley", f"a factor below {LOSSIEST_PULLEY:g}")
    factor, weight = sqrt(max(value, 1.0)), sqrt(up.value * down.value)
    return Pulley(
        Measured(factor, factor * unsure / 2, "ratio"), Measured(weight, weight * unsure / 2, "force")
    )


def zero_at(share: float, way: LineWay) -> Measured:
    """What the gauge shows of its own at one moment between its two zeros.

    Parameters
    ----------
    share : float
        Moment as a share of the time between the zeros [-], 0 to 1.
    way : LineWay
        The zeros before and after [N]; one of them counts for both.

    Returns
    -------
    Measured
        Zero with its standard uncertainty [N].

    Raises
    ------
    ValueError
        A share outside 0 to 1.

    Notes
    -----
    z = z0 + (z1 - z0) x. That the drift is straight is taken on trust: at worst it came in one jump, so the
    uncertainty holds sqrt(x (1 - x)) |z1 - z0|, the deviation of a jump at an unknown moment, as well.

    Source
    ------
    JCGM 100:2008, 3.2.4 (known effects are corrected), F.2.4.5 (what a correction leaves open).

    Examples
    --------
    >>> way = LineWay(zero_before=Measured(0.0, 0.0, "force"), zero_after=Measured(0.4, 0.0, "force"))
    >>> round(zero_at(0.25, way).value, 3), round(zero_at(1.0, way).uncertainty, 3)
    (0.1, 0.0)
    """
    if not 0 <= share <= 1:
        raise ValueError(f"share must lie between 0 and 1; came {share}")
    known = [zero for zero in (way.zero_before, way.zero_after) if zero is not None]
    if not known:
        return Measured(0.0, 0.0, "force")
    first, last = known[0], known[-1]
    if len(known) == 1:
        return first
    moved = last.value - first.value
    spread = sqrt(
        ((1 - share) * first.uncertainty) ** 2
        + (share * last.uncertainty) ** 2
        + share * (1 - share) * moved**2
    )
    return Measured(first.value + share * moved, spread, "force")


def corrected(trace: PullTrace, gauge: Gauge, way: LineWay) -> tuple[PullTrace, Gauge]:
    """A trace as the line pulled, and the gauge with what the correction leaves unsure.

    Parameters
    ----------
    trace : PullTrace
        Times [s] and pull [N] as the gauge showed them.
    gauge : Gauge
        What is known of the gauge [N and fractions].
    way : LineWay
        Zeros [N], pulley [1] and angle [rad].

    Returns
    -------
    tuple
        The trace with its pull put right [N], and the gauge with the uncertainty of that [N and fractions].

    Raises
    ------
    Unreadable
        An angle beyond 60 deg.

    Notes
    -----
    pull = (shown - zero) cos(angle) / pulley. The step of the display shrinks or grows by the same factor.

    Source
    ------
    Statics and JCGM 100:2008 as in the functions above.

    Examples
    --------
    >>> from spoolwright.bench.trace import Found
    >>> t = np.linspace(0.0, 1.0, 3)
    >>> trace = PullTrace(t, t + 10.5, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 3))
    >>> way = LineWay(zero_before=Measured(0.5, 0.0, "force"), zero_after=Measured(1.5, 0.0, "force"))
    >>> corrected(trace, Gauge(), way)[0].force.tolist()
    [10.0, 10.0, 10.0]
    """
    if way.straight:
        return trace, gauge
    shares = (trace.time - trace.time[0]) / (trace.time[-1] - trace.time[0])
    force = (trace.force - _zeros(shares, way)) * way.factor.value
    return replace(trace, force=force, notes=(*trace.notes, *said(way))), _unsure(gauge, way)


def _unsure(gauge: Gauge, way: LineWay) -> Gauge:
    """The gauge as the line feels it: its step, and what the correction leaves unsure."""
    factor = way.factor
    return replace(
        gauge,
        resolution=None if gauge.resolution is None else gauge.resolution * factor.value,
        way_unsure=factor.uncertainty / factor.value,
        zero_unsure=max(zero_at(share, way).uncertainty for share in (0.0, 0.5, 1.0)) * factor.value,
    )


def corrected_pulls(
    taken: Sequence[OnePull], gauge: Gauge, way: LineWay
) -> tuple[tuple[OnePull, ...], Gauge]:
    """Several pulls as the line pulled, in the order they were taken, and the gauge with what that leaves.

    Parameters
    ----------
    taken : sequence of OnePull
        Pulls [N] as the scale showed them, in order.
    gauge : Gauge
        What is known of the gauge [N and fractions].
    way : LineWay
        Zeros [N], pulley [1] and angle [rad].

    Returns
    -------
    tuple
        The pulls put right [N], and the gauge with the uncertainty of that [N and fractions].

    Raises
    ------
    Unreadable
        An angle beyond 60 deg; a pull that is less than the zero.

    Notes
    -----
    As `corrected`, the pulls taken as evenly spaced between the two zeros. A display whose step is coarser
    than the last digit that was typed counts with its step.

    Source
    ------
    Statics and JCGM 100:2008 as in the functions above.

    Examples
    --------
    >>> way = LineWay(pulley=Measured(1.25, 0.0, "ratio"))
    >>> float(corrected_pulls([OnePull(1, 50.0)], Gauge(), way)[0][0].running)
    40.0
    """
    step = gauge.resolution or 0.0
    taken = tuple(replace(pull, step=max(pull.step, step)) for pull in taken)
    if way.straight:
        return taken, gauge
    factor = way.factor.value
    shares = np.linspace(0.0, 1.0, len(taken)) if len(taken) > 1 else np.array([0.5])
    found = []
    for number, (pull, zero) in enumerate(zip(taken, _zeros(shares, way), strict=True), 1):
        running = (pull.running - zero) * factor
        if running < 0 and pull.running > 0:
            raise Unreadable(
                "the pull is less than the gauge's zero", f"pull {number}", "zeros below every pull"
            )
        start = None if pull.start_up is None else (pull.start_up - zero) * factor
        found.append(replace(pull, running=max(running, 0.0), start_up=start, step=pull.step * factor))
    return tuple(found), _unsure(gauge, way)


def said(way: LineWay) -> tuple[str, ...]:
    """What was corrected, in words.

    Parameters
    ----------
    way : LineWay
        Zeros [N], pulley [1] and angle [rad].

    Returns
    -------
    tuple of str
        Sentences [-]; none where nothing was corrected.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> said(LineWay(pulley=Measured(1.04, 0.01, "ratio")))
    ('The pull was divided by 1.040 for the pulley on its way.',)
    """
    words = []
    if way.zero_before or way.zero_after:
        words.append("The gauge's zero was taken off, with its drift from before to after.")
    if way.pulley:
        words.append(f"The pull was divided by {way.pulley.value:.3f} for the pulley on its way.")
    if way.angle:
        words.append(
            f"The line left at {degrees(abs(way.angle.value)):.0f} deg from straight: "
            f"{angle_factor(way.angle).value:.1%} of the pull turns the spool."
        )
    return tuple(words)


def _zeros(shares: NDArray[np.float64], way: LineWay) -> NDArray[np.float64]:
    first, last = zero_at(0.0, way).value, zero_at(1.0, way).value
    return np.asarray(first + shares * (last - first))
