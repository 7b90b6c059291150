"""What do the spool's bearings stand, how long do they last, and what would ceramic balls change in them?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import pi

import numpy as np

from spoolwright.judgement import free_spin
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, draw
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import chosen
from spoolwright.judgement.worn_face import Use
from spoolwright.mechanics import lubricant, rolling
from spoolwright.sheets import lubricants
from spoolwright.sheets.bearing_sizes import StandardBearing, bearing_size
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Bearing

RUN = 4.0
"""Speed of line in a fish's run [m/s], for the oil film: the house's standard run."""
LOAD_DRAWS: Mapping[str, Distribution] = {
    "share": Rectangular(0.5, 0.9),
    "rating": Rectangular(0.0, 1.0),
    "stainless": Rectangular(0.80, 1.0),
    "temperature": Rectangular(278.15, 298.15),
}
"""How two bearings share a pull that wanders, and what catalogues leave open: judgement priors."""


@dataclass(frozen=True)
class BearingLife:
    """One bearing: static safety [-], life [m of line], kappa [-], torque [N m], a hybrid's safety [-]."""

    place: str
    size: str
    kind: str
    load: Predicted
    safety: Predicted
    hybrid_safety: Predicted
    life: Predicted
    kappa: float
    torque: float
    words: str


@dataclass(frozen=True)
class BearingLives:
    """The spool's bearings; `why_not` in words where none of them is a standard one."""

    pull: float
    bearings: tuple[BearingLife, ...]
    notes: tuple[str, ...]
    why_not: str


def bearing_lives(
    sheet: ReelSheet,
    readings: Readings,
    works: Sequence[str] = (),
    *,
    use: Use | None = None,
    samples: int = 1000,
    seed: int = 1,
) -> BearingLives:
    """Tell what the spool's bearings stand under the pull of a fish.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings **[SI]**; none of them moves this.
    works : sequence of str
        Ids of works **[-]**; bearings that they fit are of the same size, hybrid ones among them.
    use : Use or None
        Its fish_pull **[N]** and grit **[-]** count; None: an ordinary week.
    samples : int
        Draws that are kept **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    BearingLives
        Static safety **[-]**, life **[m]** of line under such pull that nine of ten bearings outlast.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel, fewer than 100 samples.

    Notes
    -----
    Half to nine tenths of the pull on one bearing. Life: ISO 281 with kappa at 4 m/s of line and eC from the
    grit. Rust, salt and knocks end a reel's bearings long before fatigue does; safety is what counts. A
    stainless one is rated at 0.8 to 1 of the catalogue.

    Source
    ------
    ISO 76, ISO 281 (mechanics.rolling); shares judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = bearing_lives(reel_sheet.load("tarvak-58r"), {})
    >>> len(found.bearings), found.why_not
    (2, '')
    """
    sheet = changed(sheet, chosen(tuple(works), sheet.reel.kind))
    use = use or Use()
    draws = draw(LOAD_DRAWS, samples=samples, seed=seed)
    told = [
        _told(sheet, bearing, standard, use, draws)
        for bearing in free_spin.spool_bearings(sheet)
        if (standard := _standard(bearing)) is not None
    ]
    why_not = "" if told else "The sheet names no ball bearing of a standard size for the spool."
    return BearingLives(use.fish_pull, tuple(told), _NOTES if told else (), why_not)


_NOTES = (
    "Hybrid bearings: the balls weigh four tenths, do not rust and stand poor oil better. The rings rust as "
    "before and are dented at seven tenths of the load. Fatigue life is taken as the same; oil, ends and "
    "level wind make the drag, so a clean reel casts no farther.",
    "Fatigue does not end a reel's bearing, it would take thousands of kilometres of line: salt, rust and "
    "knocks do. Read the safety.",
)


def _standard(bearing: Bearing) -> StandardBearing | None:
    size = bearing.size
    try:
        return bearing_size(size.bore, size.outer, size.width)
    except KeyError:
        return None


def _told(
    sheet: ReelSheet, bearing: Bearing, standard: StandardBearing, use: Use, draws: Mapping[str, Sample]
) -> BearingLife:
    load = np.maximum(use.fish_pull * draws["share"], 1e-3)
    rated = draws["stainless"] if bearing.kind == "stainless" else np.ones_like(load)
    still = _between(standard.static_rating.low, standard.static_rating.high, draws) * rated
    turning = _between(standard.dynamic_rating.low, standard.dynamic_rating.high, draws) * rated
    ratio = float(rolling.hybrid(standard.balls or 7, standard.ball_diameter or 1.5e-3)["static_rating"])
    steel = still if bearing.kind != "hybrid" else still * ratio
    safety = np.asarray(rolling.static_safety(steel, load, 0.0))
    pitch = standard.pitch_diameter or (standard.bore + standard.outer) / 2
    kappa = _kappa(sheet, bearing, pitch, draws)
    dirt = _dirt(use, kappa, pitch)
    turns = rolling.modified_life(turning, load, np.maximum(kappa, 0.1), dirt, still / 22)
    line = np.asarray(turns) * 1e6 * 2 * pi * sheet.spool.full_radius
    held = _predicted("static safety", safety, "ratio")
    hybrid = _predicted("static safety with ceramic balls", np.asarray(still * ratio / load), "ratio")
    return BearingLife(
        bearing.place, standard.name, bearing.kind, _predicted("load on it", load, "force"), held, hybrid,
        _predicted("line under such pull", line, "line_length"), float(np.median(kappa)),
        _torque(sheet, bearing, standard, pitch, use), _words(bearing, standard, held, hybrid),
    )  # fmt: skip


def _between(low: float, high: float, draws: Mapping[str, Sample]) -> Sample:
    return np.asarray(low + (high - low) * draws["rating"])


def _speed(sheet: ReelSheet) -> float:
    """Turns of the spool in a run [rpm]."""
    return 60 * RUN / (2 * pi * sheet.spool.full_radius)


def _kappa(sheet: ReelSheet, bearing: Bearing, pitch: float, draws: Mapping[str, Sample]) -> Sample:
    oil = lubricants.lubricant(bearing.lubricant)
    printed = oil.viscosity_40.middle, oil.viscosity_100.middle
    return np.asarray(lubricant.kappa(draws["temperature"], *printed, _speed(sheet), pitch))


def _dirt(use: Use, kappa: Sample, pitch: float) -> Sample:
    word = "normal" if use.grit == 0 else "slight to typical" if use.grit <= 0.02 else "severe"
    return np.asarray(rolling.contamination_factor(np.minimum(kappa, 4.0), pitch, word))


def _torque(sheet: ReelSheet, bearing: Bearing, standard: StandardBearing, pitch: float, use: Use) -> float:
    """Friction of the bearing in a run at room temperature [N m], run in, oiled."""
    oil = lubricants.lubricant(bearing.lubricant)
    thick = lubricant.viscosity_at(293.15, oil.viscosity_40.middle, oil.viscosity_100.middle)
    load = rolling.friction_load(0.7 * use.fish_pull, 0.0)
    f1 = rolling.load_factor(rolling.static_load(0.7 * use.fish_pull, 0.0), standard.static_rating.middle)
    return float(rolling.friction_torque(_speed(sheet), thick, pitch, load, 1.3, f1))


def _predicted(quantity: str, sample: Sample, dimension: str) -> Predicted:
    low, middle, high = np.quantile(sample, [0.05, 0.5, 0.95])
    spread = float(np.std(sample, ddof=1))
    return Predicted(quantity, float(middle), float(low), float(high), spread, dimension)


def _words(bearing: Bearing, standard: StandardBearing, held: Predicted, hybrid: Predicted) -> str:
    start = f"{bearing.place}, {standard.name}: dented at {held.low:.0f} to {held.high:.0f} times such pull"
    if held.low < 1:
        start = f"{bearing.place}, {standard.name}: such pull may dent it ({held.low:.1f} to {held.high:.1f})"
    if bearing.kind == "hybrid":
        return f"{start}."
    return f"{start}; with ceramic balls at {hybrid.low:.1f} to {hybrid.high:.1f}."
