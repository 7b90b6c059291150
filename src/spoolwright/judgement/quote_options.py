"""What should the customer be offered? Put right, improve, and the most this reel should be given."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from spoolwright.judgement import option_words
from spoolwright.judgement.carried import Carried, carried
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.job_price import OPENS, price_of
from spoolwright.judgement.option_works import Way, three_ways
from spoolwright.judgement.prediction import Predicted, Prediction
from spoolwright.judgement.price import Charge, Line, Priced
from spoolwright.judgement.promises import PromisedReading, promised_readings
from spoolwright.judgement.quote_case import NOTHING_AROUND, Around, Case, open_case
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import Work
from spoolwright.sheets.reel_sheet import ReelSheet

__all__ = ["NO_CHANGES", "Around", "Changes", "Option", "offer", "three_options"]

TITLES = {
    "put right": "Put right",
    "improve": "Improve",
    "most": "The most this reel should be given",
    "extra": "Found since",
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
    prediction: Prediction | None
    carried: Carried | None
    promises: tuple[PromisedReading, ...]
    rests_on: tuple[str, ...]
    left_undone: tuple[str, ...]
    warnings: tuple[str, ...]
    cautions: tuple[str, ...]
    compared_with_trade: str
    priced: Priced


@dataclass(frozen=True)
class Changes:
    """What somebody changed by hand: minutes by work, selling prices by part, lines added."""

    minutes: Mapping[str, int] = field(default_factory=dict)
    part_prices: Mapping[str, int] = field(default_factory=dict)
    more: Sequence[Charge] = ()


NO_CHANGES = Changes()


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
    same and more. Most: everything that the list holds, as long as the parts behind the drag carry its
    greatest pull with the margin that the load ladder asks for.

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
    case = open_case(sheet, readings, findings, rates, around=around, samples=samples, seed=seed)
    put_right, improve, most = (offer(case, way) for way in three_ways(case))
    return put_right, improve, most


def offer(case: Case, way: Way, changes: Changes = NO_CHANGES) -> Option:
    """A set of works as an option: priced, predicted, with all that has to be said beside it.

    Parameters
    ----------
    case : Case
        The reel and what is wrong with it **[SI]**.
    way : Way
        The works, proposed or chosen by hand **[-]**.
    changes : Changes
        Minutes **[min]**, prices of parts and lines **[minor unit]** that somebody changed by hand.

    Returns
    -------
    Option
        Without a prediction where no sheet describes the reel.

    Source
    ------
    Works and minutes from works.toml.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> from spoolwright.judgement.works import chosen
    >>> case = open_case(None, {}, [], starting_rates(), around=Around(kind="round multiplier"))
    >>> way = Way("by hand", chosen(["strip-and-wash", "new-pawl"], "round multiplier"))
    >>> offer(case, way).total_minor, offer(case, way, Changes(part_prices={"pawl": 8000})).total_minor
    (74400, 72900)
    """
    opened = OPENS in {*case.around.before.works, *(work.id for work in way.works)}
    learned = (
        {work.id: case.minutes(work, opened=opened) for work in way.works}
        if case.around.learned.minutes
        else {}
    )
    works = tuple(_with_minutes(work, {**learned, **changes.minutes}) for work in way.works)
    rates = replace(case.rates, own_prices={**case.rates.own_prices, **changes.part_prices})
    job = price_of(
        works, case.kind, rates, posted=case.around.posted, more=changes.more, before=case.around.before
    )
    prediction, ladder = case.predict(works), case.ladder(works)
    return Option(
        key=way.key,
        title=TITLES.get(way.key, way.key.capitalize()),
        works=works,
        minutes=job.minutes,
        lines=job.priced.lines,
        total_minor=job.priced.total_minor,
        low_minor=job.low_minor,
        high_minor=job.high_minor,
        sureness=job.sureness,
        predicted=prediction.values if prediction else {},
        prediction=prediction,
        carried=carried(ladder) if ladder else None,
        promises=promised_readings(prediction, works) if prediction else (),
        rests_on=option_words.rests_on(prediction),
        left_undone=option_words.left_undone(case, way),
        warnings=option_words.warnings(case, way, job, prediction),
        cautions=tuple(dict.fromkeys(work.caution for work in works if work.caution)),
        compared_with_trade=option_words.beside_the_trade(case, works, job),
        priced=job.priced,
    )


def _with_minutes(work: Work, minutes: Mapping[str, int]) -> Work:
    if work.id not in minutes:
        return work
    changed = {"all": minutes[work.id]}
    return replace(work, minutes_open=changed, minutes_alone=changed)
