"""What a reel is expected to do: worked out once for a sheet and its readings, and kept in this process."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from spoolwright import quantities
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lessons
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.prediction import Predicted, Prediction, predict
from spoolwright.judgement.reaching import Way, ways_to_reach
from spoolwright.judgement.star_turns import TurnAdvice, star_turn_for
from spoolwright.pages.gathered.kept_readings import FrozenTaken, thawed
from spoolwright.pages.reel_sheet.rows import coefficients
from spoolwright.pages.words import shown
from spoolwright.papers.figures import Span
from spoolwright.papers.figures import shown as figure
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES = 4000
WAY_SAMPLES = 2000
SEED = 1
KEPT = 64

GUESS = ("judgement prior", "common practice")


@dataclass(frozen=True)
class Reason:
    """One thing that a prediction rests on; a guess is said to be one."""

    words: str
    is_guess: bool


@dataclass(frozen=True)
class Expected:
    """One reading to expect, as it is set on a page: the likeliest, the span, and what both rest on."""

    title: str
    middle: str
    span: str
    conditions: str
    reasons: tuple[Reason, ...]


@lru_cache(maxsize=KEPT)
def prediction(
    sheet: ReelSheet, taken: tuple[FrozenTaken, ...], system: str, learned: Lessons = NOTHING_LEARNED
) -> Prediction:
    """What is expected of a sound reel, or of the one whose readings these are."""
    drawn = _known(sheet, taken, learned)
    return predict(sheet, thawed(taken), samples=SAMPLES, seed=SEED, system=system, known=drawn)


@lru_cache(maxsize=KEPT)
def _known(sheet: ReelSheet, taken: tuple[FrozenTaken, ...], learned: Lessons) -> Known:
    """The draws do not depend on the reader's units."""
    return know(sheet, thawed(taken), samples=SAMPLES, seed=SEED, learned=learned)


@lru_cache(maxsize=KEPT)
def reaching(
    sheet: ReelSheet,
    taken: tuple[FrozenTaken, ...],
    target: float,
    system: str,
    learned: Lessons = NOTHING_LEARNED,
) -> tuple[TurnAdvice, tuple[Way, ...]]:
    """Which turn of the star gives this pull; where none does, what would have to change."""
    advice = star_turn_for(prediction(sheet, taken, system, learned), target, system)
    if advice.turns is not None:
        return advice, ()
    ways = ways_to_reach(
        sheet, thawed(taken), target, samples=WAY_SAMPLES, seed=SEED, system=system, learned=learned
    )
    return advice, ways


def told(value: Predicted, title: str, system: str, setting: DragSetting = STAR) -> Expected:
    """A prediction in words, in the reader's units; `setting` is what sets this reel's drag."""
    span = Span(value.middle, value.low, value.high, value.dimension)
    middle, _, ends = figure(span, system).partition(", ")
    if value.dimension == "ratio":
        middle, ends = coefficients(value.middle, value.middle), coefficients(value.low, value.high)
    reasons = tuple(Reason(why, any(mark in why for mark in GUESS)) for why in value.rests_on)
    conditions = _conditions(value, system, setting)
    return Expected(title, shown.unbroken(middle), shown.unbroken(ends), conditions, reasons)


def _conditions(value: Predicted, system: str, setting: DragSetting) -> str:
    said = []
    radius, turns = value.conditions.get("radius"), value.conditions.get("star_turns")
    if isinstance(radius, float):
        said.append(f"line leaving at {shown.quantity(radius, 'length', system)}")
    if isinstance(turns, float):
        said.append(setting.stands(turns))
    diameter = value.conditions.get("line_diameter")
    if isinstance(diameter, float):
        said.append(f"line of {shown.unbroken(quantities.show_stated(diameter, 'length', system))}")
    said += [f"{word} {value.conditions[word]}" for word in ("line", "brakes") if value.conditions.get(word)]
    return ", ".join(said)


def at_radius(torque: Predicted, radius: float, system: str) -> Expected:
    """The greatest usable pull with the line leaving at this radius: the drag's torque over the radius."""
    pull = Predicted(
        "greatest usable pull",
        torque.middle / radius,
        torque.low / radius,
        torque.high / radius,
        torque.deviation / radius,
        "force",
        {"radius": radius},
        torque.rests_on,
    )
    return told(pull, "Greatest usable pull at this line level", system)


def ratio_in_words(sheet: ReelSheet) -> str:
    """ "5.30 to 1 (53 teeth on 10)"."""
    gears = sheet.gears
    if gears is None:
        return "1 to 1: this reel has no gears"
    ratio = quantities.show(gears.ratio, "ratio")
    low = ""
    if gears.low_ratio is not None:
        slow = quantities.show(gears.low_ratio, "ratio")
        low = f"; in the low gear {slow} to 1 ({gears.low_main_teeth} teeth on {gears.low_pinion_teeth})"
    return f"{ratio} to 1 ({gears.main_teeth} teeth on {gears.pinion_teeth}){low}"
