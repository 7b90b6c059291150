"""What a series of pulls says, in words: the numbers, what they rest on, what they leave open."""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright import quantities
from spoolwright.bench.pull_series import PullSeries
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_faults
from spoolwright.judgement.drag_series import CANNOT_TELL, NONE_FITS, SeriesVerdict
from spoolwright.judgement.reel_state import as_built
from spoolwright.sheets.drag_setting import STAR, DragSetting, setting_of

PRODUCT = (
    "Pull is friction times clamp force: whatever only makes one of them smaller looks the same on a scale."
)


def read_out(series: PullSeries, system: str = "metric", setting: DragSetting = STAR) -> tuple[str, ...]:
    """What was measured, before anything is said about the reel.

    Parameters
    ----------
    series : PullSeries
        Slope, onset and ratio **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.
    setting : DragSetting
        What sets this drag **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Our own words; uncertainties at k = 2.

    Examples
    --------
    >>> from spoolwright.bench import pull_series
    >>> from spoolwright.bench.pulls import OnePull
    >>> read_out(pull_series.fit([OnePull(t, 10.0 * t) for t in (1, 2, 3, 4)]))[0][:30]
    'One turn of the star adds 1.01'
    """
    each = (
        "The whole way of the lever adds" if setting.is_lever else f"One turn of the {setting.control} adds"
    )
    said = [
        f"{each} {_shown(series.per_turn, system)} where the pull rises.",
        f"The drag bites {_onset(series.onset, setting)}.",
    ]
    if series.levels_off is not None:
        said.append(f"From {_place(series.levels_off, setting)} on the pull grows no more.")
    if series.start_up_ratio is not None:
        said.append(
            f"Start-up pull over running pull: {_bare(series.start_up_ratio, system)}, over all settings."
        )
    return tuple(said)


def _shown(value: Measured, system: str) -> str:
    return quantities.show(value.value, value.dimension, system, uncertainty=value.expanded)


def _bare(value: Measured, system: str) -> str:
    return quantities.show(value.value, "ratio", system, uncertainty=value.expanded)


def _place(value: Measured, setting: DragSetting) -> str:
    if setting.is_lever:
        return f"{value.value:.0%} of its way".replace("%", " %")
    return f"{value.value:.1f} turns"


def _onset(value: Measured, setting: DragSetting) -> str:
    if setting.is_lever:
        share, spread = 100 * setting.share(value.value), 100 * setting.share(value.expanded)
        return f"at {share:.0f} % ± {spread:.0f} % of the lever’s way"
    return (
        f"{value.value:.2f} turns ± {value.expanded:.2f} turns from where the {setting.control} was counted"
    )


def verdict_words(found: SeriesVerdict) -> str:
    """The verdict in one sentence, with how likely it is.

    Parameters
    ----------
    found : SeriesVerdict
        What the series says **[-]**.

    Returns
    -------
    str
        One sentence **[-]**.

    Source
    ------
    Our own words; the chances rest on the judgement priors of drag_faults.toml.

    Examples
    --------
    >>> callable(verdict_words)
    True
    """
    causes = drag_faults.causes()
    if found.verdict == NONE_FITS:
        return (
            "None of the causes that we know gives these pulls: look at the radius, the turns, the sheet, "
            "the order of the springs, and pull again."
        )
    if found.verdict == CANNOT_TELL:
        names = [f"{causes[key].title} ({_chance(found.chances[key])})" for key in found.between]
        return f"The pulls cannot tell between {_and(names)}."
    title = causes[found.verdict].title
    return f"The pulls are those of {title} ({_chance(found.chances[found.verdict])})."


def _chance(share: float) -> str:
    return "99 % or more" if share >= 0.99 else f"{100 * share:.0f} %"


def _and(names: list[str]) -> str:
    return " and ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else names[0]


def evidence(found: SeriesVerdict, system: str = "metric") -> tuple[str, ...]:
    """What the verdict rests on, and what would settle what is left open.

    Parameters
    ----------
    found : SeriesVerdict
        What the series says **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> callable(evidence)
    True
    """
    return tuple(_evidence(found, system))


def _evidence(found: SeriesVerdict, system: str) -> Iterable[str]:
    yield _product(found, system)
    yield from _ratio(found, system)
    yield from _onset_said(found)
    yield from _others(found)
    if found.verdict == CANNOT_TELL or found.verdict == NONE_FITS:
        yield PRODUCT
        yield from _next(found)
    yield "How likely each cause was before the pulls is our judgement prior, and so is what each does."


def _product(found: SeriesVerdict, system: str) -> str:
    known, last = found.known, found.case.series.settings[-1].at
    at = setting_of(found.case.sheet).stands(last)
    return (
        f"With the {at} the pull is known to {_share(known.pull)}; friction {known.friction.value:.3f} "
        f"({_share(known.friction)}) and clamp force {_shown(known.clamp, system)} each far less, because "
        "only their product pulls."
    )


def _share(value: Measured) -> str:
    return f"± {100 * value.expanded / value.value:.0f} %" if value.value > 0 else "nothing"


def _ratio(found: SeriesVerdict, system: str) -> Iterable[str]:
    ratio = found.case.series.start_up_ratio
    usual = as_built(found.case.sheet).ranges["start_up_ratio"]
    if ratio is None:
        yield "No start-up pull was taken: glazed washers and oiled ones cannot be told by it."
        return
    side = "above" if ratio.value > usual.high else "below" if ratio.value < usual.low else "within"
    between = quantities.show_interval(usual.low, usual.high, "ratio", system)
    yield f"Start-up ratio {_bare(ratio, system)}, {side} what these discs give when sound ({between})."


def _onset_said(found: SeriesVerdict) -> Iterable[str]:
    case = found.case
    if case.felt:
        yield "“Free” was found by feel, so where the drag bites says nothing about thickness."
    if case.earlier is not None:
        later = case.series.onset.value - case.earlier.onset.value
        share = case.series.per_turn.value / case.earlier.per_turn.value - 1
        where = setting_of(case.sheet)
        moved = f"{100 * where.share(later):+.0f} % of its way" if where.is_lever else f"{later:+.2f} turns"
        yield (
            f"Beside the earlier series it bites {moved} later, and each turn adds "
            f"{100 * share:+.0f} % of pull."
        )
    if case.lost is not None:
        lost = quantities.show(case.lost.value, "length", uncertainty=case.lost.expanded)
        yield f"The discs were measured: {lost} thinner than new, all together."
    if case.ruled_out:
        causes = drag_faults.causes()
        names = [cause.title for key, cause in causes.items() if key in case.ruled_out]
        yield f"Looked for and not found: {_and(names)}."


def _others(found: SeriesVerdict) -> Iterable[str]:
    causes = drag_faults.causes()
    rest = [key for key in found.chances if key not in found.between and found.chances[key] >= 0.01]
    if rest:
        names = [f"{causes[key].title} {_chance(found.chances[key])}" for key in rest]
        yield f"Less likely: {_and(names)}."
    if found.verdict == drag_faults.SOUND:
        yield "A small fault may still hide within what sound reels of this model differ by."


def _next(found: SeriesVerdict) -> Iterable[str]:
    causes = drag_faults.causes()
    asked = [causes[key].next for key in found.between if causes[key].next]
    if asked:
        first, *more = asked
        yield f"What would tell: {'; or '.join([first, *more])}."
