"""What is known of a reel and predicted of it after some works: worked out once, and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.book_lessons import Lessons
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.prediction import Prediction, predict
from spoolwright.pages.gathered.kept_readings import FrozenTaken, thawed
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES = 2000
SEED = 1
KEPT = 64


@lru_cache(maxsize=2 * KEPT)
def known(
    sheet: ReelSheet, taken: tuple[FrozenTaken, ...], learned: Lessons, samples: int = SAMPLES
) -> Known:
    """The draws that agree with the readings; they depend neither on works nor on the reader's units."""
    return know(sheet, thawed(taken), samples=samples, seed=SEED, learned=learned)


@lru_cache(maxsize=2 * KEPT)
def prediction(
    sheet: ReelSheet, taken: tuple[FrozenTaken, ...], works: tuple[str, ...], system: str, learned: Lessons
) -> Prediction:
    """What this reel would do after these works."""
    drawn = known(sheet, taken, learned)
    return predict(sheet, thawed(taken), works, system=system, known=drawn)
