"""What should the customer be offered? Put right, improve, and the most this reel should be given."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from spoolwright import quantities
from spoolwright.judgement import money
from spoolwright.judgement.findings import Finding, Wrong, whats_wrong
from spoolwright.judgement.job_price import OPENS, JobPrice, price_of
from spoolwright.judgement.line_check import line_warning
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.prediction import Predicted, Prediction, predict
from spoolwright.judgement.price import Line, Priced, compared_with_trade
from spoolwright.judgement.promises import PromisedReading, promised_readings
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.taken import Readings, listed
from spoolwright.judgement.works import Work, all_works
from spoolwright.sheets.reel_sheet import ReelSheet

MOST_OVER_BUILT = 1.25
"""How far above its build we take a reel's pull: a judgement prior that stands in for a ladder of loads."""

WORN_VALUE, OFTEN_TOO_MUCH = Fraction(1, 2), Fraction(3, 5)
"""Shares of the used price above which a repair wants a word: common practice, no source."""

OLD_DISCS = ("felt", "leather", "hard fibre", "cork")
"""Friction discs for which carbon is an improvement; a stack of anything else is renewed with carbon."""

TITLES = {
    "put right": "Put right",
    "improve": "Improve",
    "most": "The most this reel should be given",
}


@dataclass(frozen=True)
class Option:
    """One of the three ways, with all that the customer needs to choose."""

    key: str
    title: str
    works: tuple[Work, ...]
    minutes: int
    lines: tuple[Line, ...]
    total_minor: int
    low_minor: int
    high_minor: int
    sureness: tuple[str, ...]
    predicted: Mapping[str, Predicted]
    prediction: Prediction
    promises: tuple[PromisedReading, ...]
    rests_on: tuple[str, ...]
    left_undone: tuple[str, ...]
    warnings: tuple[str, ...]
    cautions: tuple[str, ...]
    compared_with_trade: str
    priced: Priced


@dataclass(frozen=True)
class Around:
    """What is known besides the reel itself.

    `used_price_minor` is what it would fetch used, `line_strength` the breaking pull of its line [N],
    `posted` whether it goes home by post, `system` the reader's units.
    """

    used_price_minor: int | None = None
    line_strength: float | None = None
    posted: bool = True
    system: str = "metric"


NOTHING_AROUND = Around()


@dataclass(frozen=True)
class _Case:
    """What the three options share."""

    sheet: ReelSheet
    readings: Readings
    wrong: tuple[Wrong, ...]
    rates: ShopRates
    sound: Prediction
    now: Prediction
    around: Around
    known: Known

    def predict(self, works: Sequence[Work]) -> Prediction:
        ids = [work.id for work in works]
        return predict(self.sheet, self.readings, ids, system=self.around.system, known=self.known)

    def money(self, minor: int) -> str:
        return money.show(minor, self.rates.money_mark, self.rates.minor_per_major)


def three_options(
    sheet: ReelSheet,
    readings: Readings,
    findings: Iterable[Finding],
    rates: ShopRates,
    *,
    around: Around = NOTHING_AROUND,
    samples: int = 2000,
    seed: int = 1,
) -> tuple[Option, Option, Option]:
    """Three ways to go on with a reel, each priced and predicted.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
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
    tuple of three Option
        "put right", "improve", "most": each holds the one before it or better works in its place.

    Notes
    -----
    Put right: what answers findings and readings outside their good range. Improve: works that answer the
    same and more. Most: everything that the list holds, as long as the greatest pull stays within 1.25
    times what a sound reel of this model gives. That factor is a judgement prior; the ladder of loads is
    to take its place.

    Source
    ------
    Works and minutes from works.toml; order of the options common practice.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> options = three_options(sheet, {}, [Finding("pawl", "F15")], starting_rates(), samples=500)
    >>> [option.key for option in options]
    ['put right', 'improve', 'most']
    """
    taken = listed(readings)
    sound = predict(sheet, {}, samples=samples, seed=seed, system=around.system)
    known = know(sheet, readings, samples=samples, seed=seed)
    now = predict(sheet, readings, system=around.system, known=known) if taken else sound
    wrong = whats_wrong(sheet, taken, findings, sound)
    case = _Case(sheet, readings, wrong, rates, sound, now, around, known)
    put_right = _put_right(case)
    improve = _joined(case, put_right, _better(case))
    most, held_back = _most(case, improve)
    return (
        _option(case, "put right", put_right, [work for work in improve if work not in put_right], ()),
        _option(case, "improve", improve, [work for work in most if work not in improve], ()),
        _option(case, "most", most, (), held_back),
    )


def _listed(case: _Case) -> list[Work]:
    return [work for work in all_works().values() if case.sheet.reel.kind in work.kinds and _fits(case, work)]


def _put_right(case: _Case) -> tuple[Work, ...]:
    about = {wrong.about for wrong in case.wrong}
    mends = [w for w in _listed(case) if w.role == "mend" and about & set(w.answers)]
    opened = any(work.needs_open for work in mends) or bool(about & {"grease-dried", "corrosion"})
    base = [w for w in _listed(case) if w.role == "base" and (w.id != "basic-clean") == opened]
    by_hand = {wrong.about for wrong in case.wrong if wrong.known_from == "finding"}
    asked = [w for w in _listed(case) if w.role == "asked" and by_hand & set(w.answers)]
    # What nobody but a better work answers (discs past dressing) is put right by that work.
    left = about - {answer for work in (*mends, *base, *asked) for answer in work.answers}
    only = [w for w in _listed(case) if w.role in ("improve", "most") and left & set(w.answers)]
    if only and not opened:
        base = [w for w in _listed(case) if w.role == "base" and w.id != "basic-clean"]
    return _without_replaced([*base, *mends, *asked, *only])


def _better(case: _Case) -> list[Work]:
    about = {wrong.about for wrong in case.wrong}
    bettered = [w for w in _listed(case) if w.role == "mend" and about & set(w.betters)]
    improving = [w for w in _listed(case) if w.role == "improve" and _worth_it(case, w, about)]
    base = [w for w in _listed(case) if w.role == "base" and w.id != "basic-clean"]
    mends = [w for w in _listed(case) if w.id in ("oil-spool-bearings", "dress-drag")]
    return [*base, *mends, *bettered, *improving]


def _worth_it(case: _Case, work: Work, about: set[str]) -> bool:
    """An improvement is offered where it answers something, or where the reel is not built so already."""
    if about & set(work.answers):
        return True
    if work.id != "carbon-drag-set" or case.sheet.drag is None:
        return False
    return any(washer.material in OLD_DISCS for washer in case.sheet.drag.stack)


def _joined(case: _Case, works: Sequence[Work], more: Sequence[Work]) -> tuple[Work, ...]:
    return _without_replaced([*works, *more])


def _without_replaced(works: Iterable[Work]) -> tuple[Work, ...]:
    """In the order of the list, once each, without those that another of them takes the place of."""
    ids = {work.id for work in works}
    replaced = {name for work in all_works().values() if work.id in ids for name in work.instead_of}
    return tuple(work for name, work in all_works().items() if name in ids - replaced)


def _most(case: _Case, improve: Sequence[Work]) -> tuple[tuple[Work, ...], tuple[str, ...]]:
    """Everything on the list, less what would take the pull past what this house gives such a reel."""
    works = tuple(improve)
    held_back: list[str] = []
    for work in [w for w in _listed(case) if w.role == "most"]:
        wider = _without_replaced([*works, work])
        if "pull_full" not in work.readings or _within_guard(case, case.predict(wider)):
            works = wider
        else:
            held_back.append(_held_back(case, work, wider))
    return works, tuple(held_back)


def _fits(case: _Case, work: Work) -> bool:
    drag, brakes = case.sheet.drag, case.sheet.brakes
    if work.id == "under-gear-disc":
        # A stack that begins with anything but the gear has a face under the gear already.
        return drag is not None and drag.acts_on == "main gear" and drag.stack[0].turns_with == "gear"
    if work.id == "new-drag-discs":
        return drag is not None and any(washer.material in OLD_DISCS for washer in drag.stack)
    if work.id == "brake-blocks-set":
        return brakes is not None and bool(brakes.blocks)
    return True


def _within_guard(case: _Case, prediction: Prediction) -> bool:
    built, given = case.sound.values.get("pull_full_spool"), prediction.values.get("pull_full_spool")
    return built is None or given is None or given.middle <= MOST_OVER_BUILT * built.middle


def _held_back(case: _Case, work: Work, wider: Sequence[Work]) -> str:
    pull = case.predict(wider).values["pull_full_spool"].middle
    most = MOST_OVER_BUILT * case.sound.values["pull_full_spool"].middle
    given, limit = (quantities.show(value, "force", case.around.system) for value in (pull, most))
    return (
        f"{work.title}: not done. It would give about {given}; we take this model no further than {limit}, "
        "a quarter above its build (judgement prior: gears, shaft, anti-reverse and frame are not yet "
        "reckoned one by one)."
    )


def _option(
    case: _Case, key: str, works: tuple[Work, ...], more: Sequence[Work], held_back: Sequence[str]
) -> Option:
    job = price_of(works, case.sheet.reel.kind, case.rates, posted=case.around.posted)
    prediction = case.predict(works)
    return Option(
        key=key,
        title=TITLES[key],
        works=works,
        minutes=job.minutes,
        lines=job.priced.lines,
        total_minor=job.priced.total_minor,
        low_minor=job.low_minor,
        high_minor=job.high_minor,
        sureness=job.sureness,
        predicted=prediction.values,
        prediction=prediction,
        promises=promised_readings(prediction, works),
        rests_on=_rests_on(prediction),
        left_undone=_left_undone(case, works, more, held_back),
        warnings=_warnings(case, job, prediction),
        cautions=tuple(dict.fromkeys(work.caution for work in works if work.caution)),
        compared_with_trade=_compared(case, job, works),
        priced=job.priced,
    )


def _compared(case: _Case, job: JobPrice, works: Sequence[Work]) -> str:
    """Beside the customary ask: works that only a full tune holds are measured against a full tune."""
    known = {tier.key for tier in case.rates.tiers}
    tier = "full" if any(work.within == ("full",) for work in works) and "full" in known else job.tier
    return compared_with_trade(job.priced, tier, case.rates) if tier else ""


def _rests_on(prediction: Prediction) -> tuple[str, ...]:
    wanted = ("pull_full_spool", "start_up_ratio", "spin_time")
    return tuple(
        dict.fromkeys(
            why for key in wanted if key in prediction.values for why in prediction.values[key].rests_on
        )
    )


def _left_undone(
    case: _Case, works: Sequence[Work], more: Sequence[Work], held_back: Sequence[str]
) -> tuple[str, ...]:
    replaced = [all_works()[name] for work in works for name in work.instead_of]
    answered = {answer for work in (*works, *replaced) for answer in (*work.answers, *work.betters)}
    # Of the full strip only its first step is named: the rest comes with it.
    named = [work for work in more if work.role != "base" or work.id == OPENS]
    open_findings = [f"Not answered: {wrong.words}." for wrong in case.wrong if wrong.about not in answered]
    return (*open_findings, *(f"Not in this: {work.title.lower()}." for work in named), *held_back)


def _warnings(case: _Case, job: JobPrice, prediction: Prediction) -> tuple[str, ...]:
    found = [*prediction.warnings, *prediction.notes, *_pull_falls(case, prediction), *_cost(case, job)]
    if job.low_minor != job.high_minor:
        low, high = case.money(job.low_minor), case.money(job.high_minor)
        found.append(f"Prices of parts are not all on our list: expect {low} to {high}.")
    found.extend(f"{only[0].upper()}{only[1:]}." for only in job.only_if)
    full = prediction.values.get("pull_full_spool")
    if case.around.line_strength and full is not None:
        found.append(line_warning(case.around.line_strength, full, case.around.system))
    return tuple(words for words in found if words)


def _pull_falls(case: _Case, prediction: Prediction) -> list[str]:
    before, then = case.now.values.get("pull_full_spool"), prediction.values.get("pull_full_spool")
    if before is None or then is None or then.middle >= 0.93 * before.middle:
        return []
    shown = [quantities.show(value.middle, "force", case.around.system) for value in (before, then)]
    return [f"The greatest pull is expected to fall, from about {shown[0]} to about {shown[1]}."]


def _cost(case: _Case, job: JobPrice) -> list[str]:
    if not case.around.used_price_minor:
        return []
    share = Fraction(job.priced.total_minor, case.around.used_price_minor)
    if share <= WORN_VALUE:
        return []
    total, worth = case.money(job.priced.total_minor), case.money(case.around.used_price_minor)
    strong = "That is more than such a repair is usually worth" if share > OFTEN_TOO_MUCH else "Think it over"
    return [
        f"This costs {total}, {float(share):.0%} of the {worth} that the reel would fetch used. {strong}."
    ]
