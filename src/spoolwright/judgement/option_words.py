"""What is said beside an option: what it rests on, leaves undone, what to mind, what the trade asks."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from spoolwright import quantities
from spoolwright.judgement.job_price import OPENS, JobPrice
from spoolwright.judgement.line_check import line_warning
from spoolwright.judgement.option_works import Way, past_guard
from spoolwright.judgement.prediction import Prediction
from spoolwright.judgement.price import compared_with_trade
from spoolwright.judgement.quote_case import Case
from spoolwright.judgement.works import Work, all_works

WORN_VALUE, OFTEN_TOO_MUCH = Fraction(1, 2), Fraction(3, 5)
"""Shares of the used price above which a repair wants a word: common practice, no source."""


def rests_on(prediction: Prediction | None) -> tuple[str, ...]:
    """What the three readings that matter most rest on, each reason once.

    Parameters
    ----------
    prediction : Prediction or None
        What is expected **[SI]**.

    Returns
    -------
    tuple of str
        Reasons in words **[-]**; empty without a prediction.

    Source
    ------
    `prediction.Predicted.rests_on`.

    Examples
    --------
    >>> rests_on(None)
    ()
    """
    wanted = ("pull_full_spool", "start_up_ratio", "spin_time")
    values = prediction.values if prediction else {}
    return tuple(dict.fromkeys(why for key in wanted if key in values for why in values[key].rests_on))


def left_undone(case: Case, way: Way) -> tuple[str, ...]:
    """What these works do not answer and what the wider option would do besides.

    Parameters
    ----------
    case : Case
        The reel and what is wrong with it **[SI]**.
    way : Way
        The works **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Trade rule: show what is left undone; common practice, no source.

    Examples
    --------
    >>> from spoolwright.judgement.findings import Finding
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> case = open_case(None, {}, [Finding("pawl", "F15")], starting_rates(),
    ...                  around=Around(kind="round multiplier"))
    >>> left_undone(case, Way("by hand", ()))
    ('Not answered: level-wind pawl worn at the tip.',)
    """
    before = [all_works()[name] for name in case.around.before.works if name in all_works()]
    replaced = [all_works()[name] for work in way.works for name in work.instead_of]
    done = (*before, *way.works, *replaced)
    answered = {answer for work in done for answer in (*work.answers, *work.betters)}
    # Of the full strip only its first step is named: the rest comes with it.
    named = [work for work in way.wider if work.role != "base" or work.id == OPENS]
    open_findings = [f"Not answered: {wrong.words}." for wrong in case.wrong if wrong.about not in answered]
    return (*open_findings, *(f"Not in this: {work.title.lower()}." for work in named), *way.held_back)


def warnings(case: Case, way: Way, job: JobPrice, prediction: Prediction | None) -> tuple[str, ...]:
    """What to mind before saying yes: the stack, the pull, the price, the line.

    Parameters
    ----------
    case : Case
        The reel **[SI]**.
    way : Way
        The works **[-]**.
    job : JobPrice
        Their price **[minor unit]**.
    prediction : Prediction or None
        What they would give **[SI]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Shares of the used price: common practice, no source; the rest from `predict` and `price_of`.

    Examples
    --------
    >>> from spoolwright.judgement.job_price import price_of
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> around = Around(kind="fly", used_price_minor=20000)
    >>> case = open_case(None, {}, [], starting_rates(), around=around)
    >>> job = price_of([], "fly", case.rates)
    >>> warnings(case, Way("by hand", ()), job, None)[0][:40]
    'This costs 129.00 kr, 64% of the 200.00 '
    """
    found = [*_predicted(case, prediction if _is_news(case, way) else None), *_cost(case, job)]
    # What was held back says the same of the work that would go past the guard.
    if way.key != "most" or not way.held_back:
        found.append(past_guard(case, way.works))
    if job.low_minor != job.high_minor:
        low, high = case.money(job.low_minor), case.money(job.high_minor)
        found.append(f"Prices of parts are not all on our list: expect {low} to {high}.")
    found.extend(f"{only[0].upper()}{only[1:]}." for only in job.only_if)
    return tuple(words for words in found if words)


def beside_the_trade(case: Case, works: Sequence[Work], job: JobPrice) -> str:
    """Beside the customary ask: of a full tune where the works come nearest to one, else of what is charged.

    Parameters
    ----------
    case : Case
        The reel and the shop's rates **[minor unit]**.
    works : sequence of Work
        The works **[-]**.
    job : JobPrice
        Their price **[minor unit]**.

    Returns
    -------
    str
        One sentence **[-]**; empty where no tier holds any of it.

    Source
    ------
    Customary asks: common practice, no source.

    Examples
    --------
    >>> from spoolwright.judgement.job_price import price_of
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> case = open_case(None, {}, [], starting_rates(), around=Around(kind="fly"))
    >>> beside_the_trade(case, [], price_of([], "fly", case.rates))
    ''
    """
    return compared_with_trade(job.priced, _measure(case, works, job), case.rates) if job.tier else ""


def _measure(case: Case, works: Sequence[Work], job: JobPrice) -> str:
    """A small work of a full tune does not make a common tune one: the usual minutes decide."""
    usual = {tier.key: tier.minutes[case.kind] for tier in case.rates.tiers if case.kind in tier.minutes}
    if not {"full", job.tier} <= usual.keys() or all(work.within != ("full",) for work in works):
        return job.tier
    return min((job.tier, "full"), key=lambda key: abs(job.minutes - usual[key]))


def _is_news(case: Case, way: Way) -> bool:
    """An extra that does not touch drag or spool was warned of with the works agreed before."""
    if not case.around.before.is_anything:
        return True
    return any({"pull_full", "start_up_ratio", "spin_time"} & set(work.readings) for work in way.works)


def _predicted(case: Case, prediction: Prediction | None) -> list[str]:
    if prediction is None:
        return []
    found = [*prediction.warnings, *prediction.notes, *_pull_falls(case, prediction)]
    full = prediction.values.get("pull_full_spool")
    if case.around.line_strength and full is not None:
        found.append(line_warning(case.around.line_strength, full, case.around.system))
    return found


def _pull_falls(case: Case, prediction: Prediction) -> list[str]:
    before = case.now.values.get("pull_full_spool") if case.now else None
    then = prediction.values.get("pull_full_spool")
    if before is None or then is None or then.middle >= 0.93 * before.middle:
        return []
    shown = [quantities.show(value.middle, "force", case.around.system) for value in (before, then)]
    return [f"The greatest pull is expected to fall, from about {shown[0]} to about {shown[1]}."]


def _cost(case: Case, job: JobPrice) -> list[str]:
    if not case.around.used_price_minor:
        return []
    before = case.around.before.total_minor
    whole = before + job.priced.total_minor
    share = Fraction(whole, case.around.used_price_minor)
    if share <= WORN_VALUE:
        return []
    total, worth = case.money(whole), case.money(case.around.used_price_minor)
    costs = f"With what was agreed before this comes to {total}" if before else f"This costs {total}"
    strong = "That is more than such a repair is usually worth" if share > OFTEN_TOO_MUCH else "Think it over"
    return [f"{costs}, {float(share):.0%} of the {worth} that the reel would fetch used. {strong}."]
