"""Pull against the setting of star, knob or lever: where it bites, what a turn adds, where it levels off."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import budget, pulls
from spoolwright.bench.budget import Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull, Scatter, Setting
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

FEWEST_SETTINGS = 3
ACCEPTED = "pulls at three settings or more, the drag set anew for each"

LEVELS_OFF = 0.95
"""Chance from which it is said that the pull levels off."""

ONSETS, ENDS = 161, 31
"""Places on the grid: a hundredth or so of what they are spread over, far finer than pulls can tell."""

Array = NDArray[np.float64]


@dataclass(frozen=True)
class PullSeries:
    """What pulls at several settings say, before anything is known of the reel.

    per_turn: pull that one turn adds where it rises [N]. onset: turns before the drag bites [-].
    levels_off: turns from which nothing is added [-], None where that is not shown. start_up_ratio: one for
    all settings [-], None where no start-up pull was given. misfit: how far the settings lie from the
    straight line, over what their scatter explains [-]: 1 or less is as straight as can be seen.
    """

    pulls: tuple[OnePull, ...]
    settings: tuple[Setting, ...]
    scatter: Scatter
    gauge: Gauge
    per_turn: Measured
    onset: Measured
    levels_off: Measured | None
    start_up_ratio: Measured | None
    misfit: float
    fitted: tuple[tuple[float, float], ...]
    budget: tuple[Contribution, ...]
    notes: tuple[str, ...]


@dataclass(frozen=True)
class _Grid:
    """Every broken line that was tried: where it begins and ends, its slope, its misfit, its weight."""

    onset: Array
    end: Array
    slope: Array
    slope_error: Array
    chi2: Array
    weight: Array


def fit(taken: Sequence[OnePull], gauge: Gauge | None = None) -> PullSeries:
    """Where the drag bites, what a turn adds, where it levels off, and how sure that is.

    Parameters
    ----------
    taken : sequence of OnePull
        Pulls [N] at their settings in turns, or shares of a lever's way [-]; three settings or more.
    gauge : Gauge or None
        What is known of the gauge [N and fractions].

    Returns
    -------
    PullSeries
        Slope [N per turn], onset and end [turns], start-up ratio [1], each with its standard uncertainty.

    Raises
    ------
    Unreadable
        Fewer than three settings, or pulls that do not rise with the setting.

    Notes
    -----
    pull = slope (min(turns, end) - onset), nothing below the onset. Every onset and end on a grid is weighed
    by exp(-chi^2 / 2), the slope solved for each; means and deviations are taken over the grid. Where the
    line fits worse than the scatter allows, all uncertainties grow by the square root of chi^2 over its
    degrees of freedom. The scale of the gauge counts for the slope only, its zero for the onset.

    Source
    ------
    Weighted least squares, JCGM 100:2008, H.3; grid of a posterior with flat priors, any text on Bayesian
    statistics; the factor on a misfit: Birge, Physical Review 40 (1932) 207 (from memory).

    Examples
    --------
    >>> found = fit([OnePull(t, 10.0 * (t - 0.5)) for t in (1.0, 1.5, 2.0, 2.5, 3.0)])
    >>> round(found.per_turn.value, 1), round(found.onset.value, 2)
    (10.0, 0.5)
    """
    gauge = gauge or Gauge()
    pulls.check(taken, FEWEST_SETTINGS, ACCEPTED)
    scatter = pulls.scatter_of(taken)
    settings = pulls.settings_of(taken, scatter)
    _check(settings)
    grid = _weighed(settings)
    misfit = _misfit(grid, len(settings))
    rows = tuple(_rows(grid, misfit, gauge, settings, taken))
    slope, onset = _mean(grid, grid.slope), _mean(grid, grid.onset)
    return PullSeries(
        pulls=tuple(taken),
        settings=settings,
        scatter=scatter,
        gauge=gauge,
        per_turn=budget.measured(slope, "force", [r for r in rows if r.result == "per_turn"]),
        onset=budget.measured(onset, "ratio", [r for r in rows if r.result == "onset"]),
        levels_off=_levels_off(grid, misfit, settings),
        start_up_ratio=pulls.start_up_ratio(taken),
        misfit=misfit,
        fitted=_line(grid, settings),
        budget=rows,
        notes=tuple(_notes(settings, scatter, misfit, gauge)),
    )


def _check(settings: Sequence[Setting]) -> None:
    if len(settings) < FEWEST_SETTINGS:
        raise Unreadable(f"there are {len(settings)} settings", "", ACCEPTED)
    at = np.array([one.at for one in settings])
    pull = np.array([one.running.value for one in settings])
    if not np.all(np.isfinite(at)) or at.min() < 0:
        raise Unreadable("a setting is below zero", "", "turns from free, zero or more")
    centred = at - at.mean()
    if not float(np.sum(centred * pull)) > 0:
        raise Unreadable("the pull does not rise as the drag is set harder", "", ACCEPTED)


def _weighed(settings: Sequence[Setting]) -> _Grid:
    at = np.array([one.at for one in settings])
    pull = np.array([one.running.value for one in settings])
    weight = 1 / np.array([one.running.uncertainty for one in settings]) ** 2
    reach = at[-1] - at[0]
    rising = at[int(np.argmax(pull > 0.05 * pull.max()))]
    onsets = np.linspace(at[0] - reach, rising, ONSETS)
    ends = np.append(_ends(at, rising), at[-1])
    onset, end = (grid.ravel() for grid in np.meshgrid(onsets, ends, indexing="ij"))
    shape = np.clip(at, onset[:, None], end[:, None]) - onset[:, None]
    square = np.sum(weight * shape**2, axis=1) + 1e-12 * np.sum(weight)
    slope = np.sum(weight * shape * pull, axis=1) / square
    chi2 = np.sum(weight * (pull - slope[:, None] * shape) ** 2, axis=1)
    prior = np.where(end == at[-1], 0.5, 0.5 / max(len(ends) - 1, 1))
    found = prior * np.exp(-0.5 * (chi2 - chi2.min())) / np.sqrt(square)
    return _Grid(onset, end, slope, 1 / np.sqrt(square), chi2, found / found.sum())


def _ends(at: Array, rising: float) -> Array:
    """Where the pull may level off: two settings or more must lie beyond."""
    last = at[-2] if len(at) > FEWEST_SETTINGS else rising
    return np.linspace(rising, last, ENDS)[1:] if last > rising else np.zeros(0)


def _mean(grid: _Grid, values: Array) -> float:
    return float(np.sum(grid.weight * values))


def _spread(grid: _Grid, values: Array) -> float:
    return float(np.sqrt(np.sum(grid.weight * (values - _mean(grid, values)) ** 2)))


def _misfit(grid: _Grid, settings: int) -> float:
    return float(np.sqrt(grid.chi2.min() / max(settings - 2, 1)))


def _rows(
    grid: _Grid, misfit: float, gauge: Gauge, settings: Sequence[Setting], taken: Sequence[OnePull]
) -> Iterable[Contribution]:
    slope = abs(_mean(grid, grid.slope))
    wide = max(1.0, misfit)
    own = float(np.hypot(_spread(grid, grid.slope), np.sqrt(np.sum(grid.weight * grid.slope_error**2))))
    scale = float(np.hypot(gauge.gain, gauge.way_unsure)) * slope
    zero = float(np.hypot(gauge.offset, gauge.zero_unsure)) / slope
    yield Contribution("per_turn", "scatter of the pulls, and step of the scale", "A", own)
    yield Contribution("per_turn", "not quite a straight line", "A", own * float(np.sqrt(wide**2 - 1)))
    yield Contribution("per_turn", "scale of the gauge, angle and pulley", "B", scale)
    spread = _spread(grid, grid.onset)
    yield Contribution("onset", "scatter of the pulls, and step of the scale", "A", spread)
    yield Contribution("onset", "not quite a straight line", "A", spread * float(np.sqrt(wide**2 - 1)))
    yield Contribution("onset", "zero of the gauge", "B", zero)


def _levels_off(grid: _Grid, misfit: float, settings: Sequence[Setting]) -> Measured | None:
    flat = grid.end < settings[-1].at
    chance = float(np.sum(grid.weight[flat]))
    if chance < LEVELS_OFF:
        return None
    weight, end = grid.weight[flat] / chance, grid.end[flat]
    mean = float(np.sum(weight * end))
    spread = float(np.sqrt(np.sum(weight * (end - mean) ** 2)))
    return Measured(mean, spread * max(1.0, misfit), "ratio")


def _line(grid: _Grid, settings: Sequence[Setting]) -> tuple[tuple[float, float], ...]:
    """The best of all lines, corner by corner."""
    best = int(np.argmin(grid.chi2))
    onset, end, slope = (float(part[best]) for part in (grid.onset, grid.end, grid.slope))
    last, first = settings[-1].at, settings[0].at
    corners = [max(onset, min(first, 0.0)), end] + ([last] if end < last else [])
    begin = [(min(first, 0.0), 0.0)] if onset > min(first, 0.0) else []
    line = [(at, slope * (min(at, end) - onset)) for at in corners]
    return tuple(begin + line)


def _notes(settings: Sequence[Setting], scatter: Scatter, misfit: float, gauge: Gauge) -> Iterable[str]:
    if not scatter.own:
        yield (
            "One pull at each setting: how far pulls scatter is a guess (3 %); pull each setting twice or "
            "more to know."
        )
    if misfit > 1.5:
        yield "The pulls do not lie on a straight line; the uncertainties were widened."
    if not gauge.stated:
        yield "The scale's accuracy was not given; the uncertainty holds scatter and last digit only."
