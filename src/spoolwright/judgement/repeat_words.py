"""What pulls one after the other, and slow and fast ones, say of a drag, in the words of the bench."""

from __future__ import annotations

from spoolwright.bench import pull_fade, pull_speed
from spoolwright.bench.pull_fade import PullFade
from spoolwright.bench.pull_speed import PullSpeed
from spoolwright.bench.uncertainty import Measured
from spoolwright.quantities import show


def fade_words(found: PullFade, system: str = "metric") -> tuple[str, ...]:
    """Whether the drag holds over repeated pulls.

    Parameters
    ----------
    found : PullFade
        First pull **[N]**, change **[1]** and verdict.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Our own words; uncertainties at k = 2.

    Examples
    --------
    >>> from spoolwright.bench.pulls import OnePull
    >>> fade_words(pull_fade.fit([OnePull(n, 50.0 - 3.0 * n) for n in range(8)]))[0][:19]
    'The drag fades: -42'
    """
    first = show(found.first.value, "force", system, uncertainty=found.first.expanded)
    does = _FADE[found.verdict]
    return (f"The drag {does}: {_percent(found.change)} from the first pull, {first}, to the last.",)


_FADE = {
    pull_fade.FADES: "fades",
    pull_fade.TIGHTENS: "tightens",
    pull_fade.HOLDS: "holds",
    pull_fade.CANNOT_TELL: "may hold or not, the pulls cannot tell",
}


def speed_words(found: PullSpeed, system: str = "metric") -> tuple[str, ...]:
    """Whether the drag sticks and slips, and from which line speed it is smooth.

    Parameters
    ----------
    found : PullSpeed
        Change **[1]**, speeds **[m/s]** and verdict.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**.

    Source
    ------
    Our own words; uncertainties at k = 2.

    Examples
    --------
    >>> from spoolwright.bench.pulls import OnePull
    >>> taken = [OnePull(v, 30.0, judder=0.3 if v < 0.1 else 0.04) for v in (0.02, 0.05, 0.2, 0.5)]
    >>> speed_words(pull_speed.fit(taken))[1:]
    ('Juddered up to 0.0500 m/s of line.', 'Smooth from 0.200 m/s of line.')
    """
    change = _percent(found.per_tenfold)
    said = [f"{_SPEED[found.verdict]} Ten times the line speed changes the pull by {change}."]
    for words, speed in (("Juddered up to", found.rough_up_to), ("Smooth from", found.smooth_from)):
        if speed is not None:
            said.append(f"{words} {show(speed, 'speed', system)} of line.")
    return tuple(said)


_SPEED = {
    pull_speed.STICKS: "The drag sticks and slips when line is drawn slowly.",
    pull_speed.SMOOTH_ALL: "The drag is smooth at every speed tried.",
    pull_speed.ROUGH_ALL: "The drag judders at every speed tried: look for a cupped disc or a burr.",
    pull_speed.CANNOT_TELL: "Whether the drag sticks and slips the pulls cannot tell.",
}


def _percent(value: Measured) -> str:
    return show(value.value, "ratio", unit="%", uncertainty=value.expanded)
