"""One reel before a quote: what is known of it, what is wrong with it, what it would do as it is."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spoolwright.judgement import money
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lessons
from spoolwright.judgement.findings import Finding, Wrong, whats_wrong
from spoolwright.judgement.job_price import NOTHING_BEFORE, Before
from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.prediction import Prediction, predict
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.taken import Readings, listed
from spoolwright.judgement.works import Work, all_works
from spoolwright.sheets.reel_sheet import ReelSheet


@dataclass(frozen=True)
class Around:
    """What is known besides the reel itself.

    `used_price_minor` is what it would fetch used, `line_strength` the breaking pull of its line [N],
    `posted` whether it goes home by post, `system` the reader's units, `kind` the kind of reel where no sheet
    says it, `before` what the customer said yes to already: then this is an extra. `learned` is what the shop
    book has taught: predictions and minutes follow it.
    """

    used_price_minor: int | None = None
    line_strength: float | None = None
    posted: bool = True
    system: str = "metric"
    kind: str = ""
    before: Before = NOTHING_BEFORE
    learned: Lessons = NOTHING_LEARNED


NOTHING_AROUND = Around()


@dataclass(frozen=True)
class Case:
    """What all options of one quote share; without a sheet nothing is predicted and the rest still holds."""

    sheet: ReelSheet | None
    readings: Readings
    wrong: tuple[Wrong, ...]
    rates: ShopRates
    around: Around
    sound: Prediction | None = None
    now: Prediction | None = None
    known: Known | None = None

    @property
    def kind(self) -> str:
        """The kind of reel."""
        return self.sheet.reel.kind if self.sheet else self.around.kind

    def predict(self, works: Sequence[Work]) -> Prediction | None:
        """What the reel would do after these works and those agreed before, where a sheet describes it."""
        if self.sheet is None:
            return None
        ids = self._ids(works)
        return predict(self.sheet, self.readings, ids, system=self.around.system, known=self.known)

    def ladder(self, works: Sequence[Work]) -> Ladder | None:
        """What would carry the pull after these works and those agreed before, where a sheet describes it."""
        if self.sheet is None:
            return None
        return load_ladder(
            self.sheet, self.readings, self._ids(works), system=self.around.system, known=self.known
        )

    def minutes(self, work: Work, *, opened: bool) -> int:
        """Minutes of a work as this shop takes them [min]; the list's own where the book has not said."""
        return self.around.learned.minutes_of(
            work.id, self.kind, work.minutes(self.kind, reel_is_open=opened)
        )

    def _ids(self, works: Sequence[Work]) -> list[str]:
        return [*(name for name in self.around.before.works if self._is_done(name)), *(w.id for w in works)]

    def _is_done(self, name: str) -> bool:
        return name in all_works() and self.kind in all_works()[name].kinds

    def money(self, minor: int) -> str:
        """A sum as this shop writes it."""
        return money.show(minor, self.rates.money_mark, self.rates.minor_per_major)


def open_case(
    sheet: ReelSheet | None,
    readings: Readings,
    findings: Iterable[Finding],
    rates: ShopRates,
    *,
    around: Around = NOTHING_AROUND,
    samples: int = 2000,
    seed: int = 1,
) -> Case:
    """Put together what the options of one quote share.

    Parameters
    ----------
    sheet : ReelSheet or None
        The model **[SI]**; None: nothing is predicted.
    readings : mapping of str to Measured or Taken
        Its readings before any work **[SI]**.
    findings : iterable of Finding
        What was found by eye and hand **[-]**.
    rates : ShopRates
        What the shop charges by **[minor unit]**.
    around : Around
        Used price **[minor unit]**, strength of the line **[N]**, post or counter, the reader's units
        **[-]**.
    samples, seed : int
        Draws and start of the prediction **[-]**.

    Returns
    -------
    Case
        What is wrong, and what a sound reel and this one do now.

    Source
    ------
    Our own bookkeeping over `predict`, `know` and `whats_wrong`.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> case = open_case(None, {}, [Finding("pawl", "F15")], starting_rates(),
    ...                  around=Around(kind="fixed spool"))
    >>> [wrong.about for wrong in case.wrong], case.predict([])
    (['pawl-worn'], None)
    """
    taken = listed(readings)
    if sheet is None:
        return Case(None, readings, whats_wrong(None, taken, findings, None), rates, around)
    drawn = {"samples": samples, "seed": seed}
    built = know(sheet, {}, **drawn, learned=around.learned)
    sound = predict(sheet, {}, system=around.system, known=built)
    known = know(sheet, readings, **drawn, learned=around.learned)
    now = predict(sheet, readings, system=around.system, known=known) if taken else sound
    wrong = whats_wrong(sheet, taken, findings, sound)
    return Case(sheet, readings, wrong, rates, around, sound, now, known)
