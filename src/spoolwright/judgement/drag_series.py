"""What is wrong with this drag? A series of pulls weighed against what each cause would have given."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.pull_series import PullSeries
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_curves, drag_faults
from spoolwright.judgement.drag_curves import Curves, Leverage, Settings
from spoolwright.judgement.drag_faults import SOUND, Cause, Setup
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.reel_state import as_built
from spoolwright.sheets.reel_sheet import ReelSheet

CANNOT_TELL, NONE_FITS = "cannot tell", "none fits"


@dataclass(frozen=True)
class Case:
    """One series of pulls on one reel, with all else that is known of its drag.

    radius: where the line leaves **[m]**. felt: "free" was found by feel and not by a stop or a mark.
    earlier: a series of the same reel when it was sound, at the same radius. lost: thickness that the
    friction discs together have lost, as measured **[m]**. ruled_out: causes that were looked for and are
    not there.
    """

    sheet: ReelSheet
    series: PullSeries
    radius: float
    felt: bool = False
    earlier: PullSeries | None = None
    lost: Measured | None = None
    ruled_out: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Known:
    """Friction, clamp force at the hardest setting **[N]**, and pull there **[N]**: the last far surer."""

    friction: Measured
    clamp: Measured
    pull: Measured


@dataclass(frozen=True)
class SeriesVerdict:
    """What a series says: the chance of each cause, the one that is named or those that are left.

    verdict: a key of `drag_faults.KEYS`, "cannot tell" or "none fits". between: the causes that are left,
    likeliest first. misfit: squared misfit a setting of the best curve of all **[-]**.
    """

    chances: Mapping[str, float]
    verdict: str
    between: tuple[str, ...]
    known: Known
    misfit: float
    case: Case

    @property
    def titles(self) -> tuple[str, ...]:
        """The causes that are left, in words."""
        return tuple(drag_faults.causes()[key].title for key in self.between)


@dataclass(frozen=True)
class _Weighed:
    """One cause: its evidence, its best squared misfit, and what its draws say of friction and clamp."""

    evidence: float
    best: float
    weight: NDArray[np.float64]
    curves: Curves


def weigh(case: Case, seed: int = 1) -> SeriesVerdict:
    """Weigh every cause against a series of pulls.

    Parameters
    ----------
    case : Case
        Series, sheet and all else that is known **[SI]**.
    seed : int
        Start of the generators **[-]**.

    Returns
    -------
    SeriesVerdict
        Chances **[-]**, verdict, and friction and clamp force as far as they can be told apart **[-, N]**.

    Raises
    ------
    ValueError
        The sheet has no drag that slips, or every cause was ruled out.

    Notes
    -----
    Chance of a cause is its prior times the mean, over its draws, of the likelihood of the pulls, of the
    start-up ratio and of a measured thickness. Pull is friction times clamp force: whatever does nothing
    but scale it looks the same, and only start-up ratio, onset, shape, whole pairs or a second measurement
    part the causes. One cause is named from 90 %; below, all are named that together reach 95 %.

    Source
    ------
    Bayes' rule with normal likelihoods (Bolstad, Introduction to Bayesian Statistics); priors:
    drag_faults.toml.

    Examples
    --------
    >>> from spoolwright.bench import pull_series
    >>> from spoolwright.bench.pulls import OnePull
    >>> from spoolwright.sheets import reel_sheet
    >>> taken = pull_series.fit([OnePull(t, 13.0 * (t - 0.9), 14.0 * (t - 0.9)) for t in (1.5, 2, 2.5, 3)])
    >>> found = weigh(Case(reel_sheet.load("tarvak-54c"), taken, 0.021))
    >>> round(sum(found.chances.values()), 6)
    1.0
    """
    if case.sheet.drag is None or not as_built(case.sheet).pairs:
        raise ValueError("sheet: a drag with slipping pairs is needed")
    setup = drag_faults.setup()
    asked = [cause for cause in drag_faults.causes().values() if _possible(cause, case)]
    if not asked:
        raise ValueError("ruled_out: a cause must be left")
    lever = _with_gauge(drag_curves.leverage(case.sheet, case.radius, seed), case)
    found = {cause.key: _of_cause(case, cause, lever, setup, seed) for cause in asked}
    chances = _chances(asked, found)
    misfit = min(one.best for one in found.values()) / _settings(case)
    between = _left(chances, setup)
    return SeriesVerdict(
        chances, _verdict(chances, misfit, setup), between, _known(found, chances, lever, case), misfit, case
    )


def _possible(cause: Cause, case: Case) -> bool:
    if cause.key in case.ruled_out:
        return False
    return not cause.pairs or len(as_built(case.sheet).pairs) > 1


def _settings(case: Case) -> int:
    return len(case.series.settings) + (len(case.earlier.settings) if case.earlier else 0)


def _with_gauge(lever: Leverage, case: Case) -> Leverage:
    """The scale of the gauge moves all pulls alike, so it widens the leverage; each part keeps its place."""
    gain = float(np.hypot(case.series.gauge.gain, case.series.gauge.way_unsure))
    if gain == 0:
        return lever
    middle = float(lever.pull.mean())
    spread = float(lever.pull.std())
    wider = np.hypot(spread, gain * middle) / spread
    return Leverage(np.maximum(middle + (lever.pull - middle) * wider, 1e-9), lever.friction)


def _of_cause(case: Case, cause: Cause, lever: Leverage, setup: Setup, seed: int) -> _Weighed:
    now = [one.at for one in case.series.settings]
    then = [one.at for one in case.earlier.settings] if case.earlier else []
    made = drag_curves.curves(case.sheet, cause, Settings(now, then, case.felt), setup, seed)
    misfit = _misfit(case.series, made.now, lever, case, setup)
    spent = _spent(case.series, case, setup)
    if case.earlier is not None:
        misfit = misfit + _misfit(case.earlier, made.then, lever, case, setup)
        spent += _spent(case.earlier, case, setup)
    log = -0.5 * misfit + _thickness(case, made)[:, np.newaxis]
    top = float(log.max())
    weight = np.exp(log - top)
    # Nothing else hangs on the start-up ratio, so its likelihood is a factor of its own.
    start = float(np.log(np.mean(np.exp(_start(case, made))) + 1e-300))
    return _Weighed(top + float(np.log(weight.mean())) + start - spent, float(misfit.min()), weight, made)


def _deviations(series: PullSeries, case: Case, setup: Setup) -> Sample:
    """Of each setting: its own scatter, the model's, and how exactly the star was set."""
    pull = np.array([one.running.value for one in series.settings])
    own = np.array([one.running.uncertainty for one in series.settings])
    drag = case.sheet.drag
    assert drag is not None
    each = np.sqrt(np.array([one.pulls for one in series.settings], dtype=np.float64))
    set_to = series.per_turn.value * (setup.way if drag.lever else setup.turn) / each
    return np.sqrt(own**2 + (setup.model * pull) ** 2 + set_to**2)


def _misfit(
    series: PullSeries, clamp: NDArray[np.float64], lever: Leverage, case: Case, setup: Setup
) -> NDArray[np.float64]:
    """Squared misfit of each draw of the clamp with each leverage, shape (n, m)."""
    weight = 1 / _deviations(series, case, setup) ** 2
    pull = np.array([one.running.value for one in series.settings])
    square = clamp**2 @ weight
    cross = clamp @ (weight * pull)
    rest = float(np.sum(weight * pull**2))
    a = lever.pull[np.newaxis, :]
    return np.asarray(np.maximum(rest - 2 * a * cross[:, np.newaxis] + a**2 * square[:, np.newaxis], 0.0))


def _spent(series: PullSeries, case: Case, setup: Setup) -> float:
    return float(np.sum(np.log(_deviations(series, case, setup))))


def _start(case: Case, made: Curves) -> Sample:
    ratio = case.series.start_up_ratio
    if ratio is None:
        return np.zeros(len(made.start_ratio))
    spread = float(np.hypot(ratio.uncertainty, 0.02))
    return np.asarray(-0.5 * ((made.start_ratio - ratio.value) / spread) ** 2)


def _thickness(case: Case, made: Curves) -> Sample:
    if case.lost is None:
        return np.zeros(len(made.lost))
    spread = max(case.lost.uncertainty, 1e-5)
    return np.asarray(-0.5 * ((made.lost - case.lost.value) / spread) ** 2)


def _chances(asked: Sequence[Cause], found: Mapping[str, _Weighed]) -> dict[str, float]:
    log = np.array([np.log(cause.chance) + found[cause.key].evidence for cause in asked])
    share = np.exp(log - log.max())
    return {cause.key: float(part) for cause, part in zip(asked, share / share.sum(), strict=True)}


def _left(chances: Mapping[str, float], setup: Setup) -> tuple[str, ...]:
    """The likeliest causes that together reach the chance that is asked for."""
    left: list[str] = []
    for key in sorted(chances, key=lambda name: -chances[name]):
        left.append(key)
        if sum(chances[name] for name in left) >= (setup.named if len(left) == 1 else setup.among):
            break
    return tuple(left)


def _verdict(chances: Mapping[str, float], misfit: float, setup: Setup) -> str:
    if misfit > setup.misfit:
        return NONE_FITS
    first = max(chances, key=lambda name: chances[name])
    return first if chances[first] >= setup.named else CANNOT_TELL


def _known(found: Mapping[str, _Weighed], chances: Mapping[str, float], lever: Leverage, case: Case) -> Known:
    """Means and deviations over all causes, each draw with its weight."""
    moments = np.zeros((3, 2))
    for key, one in found.items():
        share = one.weight * (chances[key] / one.weight.sum())
        of_draw, clamp, left = share.sum(axis=1), one.curves.clamp[:, -1], one.curves.friction
        pulling = one.curves.now[:, -1]
        for k in (1, 2):
            friction = left**k @ share @ lever.friction**k
            moments[:, k - 1] += friction, of_draw @ clamp**k, pulling**k @ share @ lever.pull**k
    means = moments[:, 0]
    spread = np.sqrt(np.maximum(moments[:, 1] - means**2, 0.0))
    kinds = ("ratio", "force", "force")
    return Known(
        *(Measured(float(m), float(s), kind) for m, s, kind in zip(means, spread, kinds, strict=True))
    )


def is_sound(verdict: SeriesVerdict) -> bool:
    """Whether the series is what a sound drag would give.

    Parameters
    ----------
    verdict : SeriesVerdict
        What `weigh` found **[-]**.

    Returns
    -------
    bool
        True where a sound drag is named **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> from spoolwright.judgement import drag_series
    >>> callable(drag_series.is_sound)
    True
    """
    return verdict.verdict == SOUND
