"""The shop book in words: a coefficient's value, its interval, and how far out a proof is."""

from __future__ import annotations

from spoolwright.judgement.book_chapter import Interval, Weighed
from spoolwright.judgement.book_kinds import Family, Kind

ABOUT: dict[Family, str] = {
    "friction": (
        "A pull holds friction and clamp force as one product, and no reading of a pull parts them. What "
        "stands here is the product's factor against the sheet, kept as a friction."
    ),
    "bearing": (
        "Palmgren's f0, with everything else that slows a free spool taken as its sheet has it: a spin time "
        "cannot tell the bearings from the ends, so only spins after work on the bearings count."
    ),
    "start-up": "The highest pull at the start over the running pull.",
    "minutes": (
        "A job is timed as a whole, so each of its works learns in proportion to its listed minutes; "
        "different jobs tell them apart. From a work's third entry on, quotes are reckoned with it."
    ),
}
"""What a chapter's coefficients are, and what they are not."""


WHAT: dict[Family, str] = {
    "friction": "friction, a ratio of two pulls",
    "bearing": "drag factor f0, a ratio",
    "start-up": "start-up ratio",
    "minutes": "minutes",
}
"""What the number is, where it stands large."""

OVERRULED = (
    "The proofs lie further out than the sheet's range allows, so the sheet is overruled: its range is wrong "
    "for this shop's reels, or something else is read here than the sheet means."
)


def value_said(kind: Kind, value: float) -> str:
    """A coefficient's value with what stands behind it.

    Parameters
    ----------
    kind : Kind
        Whose value **[-]**.
    value : float
        The value **[unit of the coefficient]**.

    Returns
    -------
    str
        Text **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> value_said(Kind("k", "friction", "k", 0.155, 0.1, 0.12, 0.19), 0.1574)
    '0.157'
    """
    if kind.family == "minutes":
        return f"{value:.1f} min" if value < 10 else f"{value:.0f} min"
    return f"{value:.3f}" if kind.family in ("friction", "start-up") else f"{value:.2f}"


def span_said(kind: Kind, found: Interval) -> str:
    """The ends of a coefficient's 90 % interval.

    Parameters
    ----------
    kind : Kind
        Whose interval **[-]**.
    found : Interval
        The interval **[unit of the coefficient]**.

    Returns
    -------
    str
        Text **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> span_said(Kind("k", "minutes", "k", 30.0, 0.1, 20.0, 40.0), Interval(30.0, 25.0, 36.0, 0.1))
    '25 to 36 min'
    """
    low, high = value_said(kind, found.low), value_said(kind, found.high)
    return f"{low.removesuffix(' min')} to {high}"


def proofs_said(count: int) -> str:
    """How many proofs stand behind a coefficient.

    Parameters
    ----------
    count : int
        Proofs of its own **[-]**.

    Returns
    -------
    str
        Words **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> proofs_said(0), proofs_said(1), proofs_said(7)
    ('no proof of its own', '1 proof', '7 proofs')
    """
    if not count:
        return "no proof of its own"
    return f"{count} proof{'' if count == 1 else 's'}"


def outlier_said(one: Weighed) -> str:
    """How far out a proof is and what it still counts; empty for one that is not.

    Parameters
    ----------
    one : Weighed
        A proof **[-]**.

    Returns
    -------
    str
        A sentence **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> from spoolwright.judgement.book_fit import Seen
    >>> outlier_said(Weighed(Seen((), 0.5, 0.01), 0.002, 3.09, 0.7)).partition(":")[0]
    'Outlier'
    """
    if not one.is_outlier:
        return ""
    way = "above" if one.seen.log > 0 else "below"
    odds = f"1 in {round(1 / one.chance):,}" if one.chance > 1e-6 else "less than 1 in a million"
    return (
        f"Outlier: {one.out:.1f} deviations from what all the others say, {way} the sheet "
        f"({odds} by chance). It stays in, with {100 * one.weight:.0f} % of its weight."
    )
