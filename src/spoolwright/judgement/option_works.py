"""Which works go into which option? What mends, what betters, and how far this house goes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spoolwright.judgement.changed_sheet import changes_sheet
from spoolwright.judgement.how_far import too_far
from spoolwright.judgement.quote_case import Case
from spoolwright.judgement.works import Work, all_works

OLD_DISCS = ("felt", "leather", "hard fibre", "cork")
"""Friction discs for which carbon is an improvement; a stack of anything else is renewed with carbon."""


@dataclass(frozen=True)
class Way:
    """One set of works under its key; `wider` are works of the next option that this one leaves out."""

    key: str
    works: tuple[Work, ...]
    wider: tuple[Work, ...] = ()
    held_back: tuple[str, ...] = ()


def three_ways(case: Case) -> tuple[Way, Way, Way]:
    """The works of the three options: put right, improve, the most.

    Parameters
    ----------
    case : Case
        The reel and what is wrong with it **[SI]**.

    Returns
    -------
    tuple of three Way
        Each holds the one before it, or better works in its place.

    Source
    ------
    Works from works.toml; order of the options common practice.

    Examples
    --------
    >>> from spoolwright.judgement.findings import Finding
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> case = open_case(None, {}, [Finding("pawl", "F15")], starting_rates(),
    ...                  around=Around(kind="round multiplier"))
    >>> "new-pawl" in [work.id for work in three_ways(case)[0].works]
    True
    """
    put_right = _put_right(case)
    improve = without_replaced([*put_right, *_better(case)])
    most, held_back = _most(case, improve)
    return (
        Way("put right", put_right, tuple(work for work in improve if work not in put_right)),
        Way("improve", improve, tuple(work for work in most if work not in improve)),
        Way("most", most, (), held_back),
    )


def extra_way(case: Case) -> Way:
    """The works that answer what was found after the customer said yes, and nothing besides.

    Parameters
    ----------
    case : Case
        The reel, with what was agreed before in `around` **[SI]**.

    Returns
    -------
    Way
        Under the key "extra"; without works where nothing on the list answers it.

    Source
    ------
    An extra found later is a new question, the old answer is kept: common practice, no source.

    Examples
    --------
    >>> from spoolwright.judgement.findings import Finding
    >>> from spoolwright.judgement.job_price import Before
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> around = Around(kind="round multiplier", before=Before("common", ("strip-and-wash", "new-pawl")))
    >>> case = open_case(None, {}, [Finding("idler cog", "F16")], starting_rates(), around=around)
    >>> [work.id for work in extra_way(case).works]
    ['new-idler-cog']
    """
    done = set(case.around.before.works)
    about = {wrong.about for wrong in case.wrong if wrong.known_from == "finding"}
    answered = {answer for name in done if name in all_works() for answer in all_works()[name].answers}
    mends = [w for w in fitting(case) if w.role in ("mend", "asked") and (about - answered) & set(w.answers)]
    return Way("extra", without_replaced([w for w in mends if w.id not in done]))


def fitting(case: Case) -> tuple[Work, ...]:
    """Every work of the list that can be done on this reel.

    Parameters
    ----------
    case : Case
        The reel **[SI]**.

    Returns
    -------
    tuple of Work
        In the order of the list.

    Source
    ------
    works.toml.

    Examples
    --------
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> case = open_case(None, {}, [], starting_rates(), around=Around(kind="fly"))
    >>> "new-pawl" in [work.id for work in fitting(case)]
    False
    """
    return tuple(work for work in all_works().values() if case.kind in work.kinds and _fits(case, work))


def without_replaced(works: Iterable[Work]) -> tuple[Work, ...]:
    """Works in the order of the list, once each, without those that another of them takes the place of.

    Parameters
    ----------
    works : iterable of Work
        The works **[-]**.

    Returns
    -------
    tuple of Work
        What is left.

    Source
    ------
    works.toml, instead_of.

    Examples
    --------
    >>> both = [all_works()["dress-drag"], all_works()["carbon-drag-set"]]
    >>> [work.id for work in without_replaced(both)]
    ['carbon-drag-set']
    """
    known = {work.id: work for work in works}
    replaced = {name for work in known.values() for name in work.instead_of}
    return tuple(known[name] for name in all_works() if name in known and name not in replaced)


def past_guard(case: Case, works: Sequence[Work]) -> str:
    """A sentence where works would take the pull past what the parts behind the drag carry; else nothing.

    Parameters
    ----------
    case : Case
        The reel **[SI]**.
    works : sequence of Work
        The works **[-]**.

    Returns
    -------
    str
        The sentence **[-]**, empty within the guard.

    Source
    ------
    The load ladder, `how_far.too_far`.

    Examples
    --------
    >>> from spoolwright.judgement.quote_case import Around, open_case
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> past_guard(open_case(None, {}, [], starting_rates(), around=Around(kind="fly")), [])
    ''
    """
    built = case.sound.values.get("pull_full_spool") if case.sound else None
    return too_far(case.ladder(works), built, case.around.system)


def _loads_more(work: Work) -> bool:
    """Whether a work can bring the drag nearer to what the parts behind it carry, from either side."""
    return "pull_full" in work.readings or any(changes_sheet(effect) for effect in work.effects)


def _put_right(case: Case) -> tuple[Work, ...]:
    about = {wrong.about for wrong in case.wrong}
    mends = [w for w in fitting(case) if w.role == "mend" and about & set(w.answers)]
    opened = any(work.needs_open for work in mends) or bool(about & {"grease-dried", "corrosion"})
    base = [w for w in fitting(case) if w.role == "base" and (w.id != "basic-clean") == opened]
    by_hand = {wrong.about for wrong in case.wrong if wrong.known_from == "finding"}
    asked = [w for w in fitting(case) if w.role == "asked" and by_hand & set(w.answers)]
    # What nobody but a better work answers (discs past dressing) is put right by that work.
    left = about - {answer for work in (*mends, *base, *asked) for answer in work.answers}
    only = [w for w in fitting(case) if w.role in ("improve", "most") and left & set(w.answers)]
    if only and not opened:
        base = [w for w in fitting(case) if w.role == "base" and w.id != "basic-clean"]
    return without_replaced([*base, *mends, *asked, *only])


def _better(case: Case) -> list[Work]:
    about = {wrong.about for wrong in case.wrong}
    bettered = [w for w in fitting(case) if w.role == "mend" and about & set(w.betters)]
    improving = [w for w in fitting(case) if w.role == "improve" and _worth_it(case, w, about)]
    base = [w for w in fitting(case) if w.role == "base" and w.id != "basic-clean"]
    mends = [w for w in fitting(case) if w.id in ("oil-spool-bearings", "dress-drag")]
    return [*base, *mends, *bettered, *improving]


def _worth_it(case: Case, work: Work, about: set[str]) -> bool:
    """An improvement is offered where it answers something, or where the reel is not built so already."""
    if about & set(work.answers):
        return True
    drag = case.sheet.drag if case.sheet else None
    if work.id != "carbon-drag-set" or drag is None:
        return False
    return any(washer.material in OLD_DISCS for washer in drag.stack)


def _most(case: Case, improve: Sequence[Work]) -> tuple[tuple[Work, ...], tuple[str, ...]]:
    """Everything on the list, less what would take the pull past what this house gives such a reel."""
    works = tuple(improve)
    held_back: list[str] = []
    for work in [w for w in fitting(case) if w.role == "most"]:
        wider = without_replaced([*works, work])
        past = past_guard(case, wider) if _loads_more(work) else ""
        if past:
            held_back.append(f"{work.title}: not done. {past}")
        else:
            works = wider
    return works, tuple(held_back)


def _fits(case: Case, work: Work) -> bool:
    if case.sheet is None:
        return True
    drag, brakes = case.sheet.drag, case.sheet.brakes
    if work.id == "under-gear-disc":
        # A stack that begins with anything but the gear has a face under the gear already.
        return drag is not None and drag.acts_on == "main gear" and drag.stack[0].turns_with == "gear"
    if work.id == "new-drag-discs":
        return drag is not None and any(washer.material in OLD_DISCS for washer in drag.stack)
    if work.id == "dress-cork":
        return drag is not None and any(washer.material == "cork" for washer in drag.stack)
    if work.id == "brake-blocks-set":
        return brakes is not None and bool(brakes.blocks)
    return True
