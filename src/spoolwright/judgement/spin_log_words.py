"""What does a spin log say in words: which kinds differ, which do not, and what it must not be taken for?"""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright import quantities
from spoolwright.bench.spin_log import SpinLog

_BASIS = {
    "kind and reel": "Kinds are compared with how differently the same kinds spun in other reels",
    "reels": "Kinds are compared with how differently reels with the same kind spun",
    "spins": "Each kind was in one reel only, so the comparison speaks of these very bearings and no others: "
    "it rests on the scatter of spins",
}


def in_words(log: SpinLog) -> tuple[str, ...]:
    """The sentences under a spin log.

    Parameters
    ----------
    log : SpinLog
        The analysed log **[s]**.

    Returns
    -------
    tuple of str
        Sentences with their numbers.

    Source
    ------
    `bench.spin_log`.

    Examples
    --------
    >>> from spoolwright.bench.spin_log import Spin, analyse
    >>> rows = [Spin(k, k, "", t) for k, t in (("a", 9.0), ("a", 10.0), ("b", 30.0), ("b", 33.0))]
    >>> "b" in in_words(analyse(rows))[0]
    True
    """
    return tuple(_sentences(log))


def _sentences(log: SpinLog) -> Iterable[str]:
    first, last = log.kinds[0], log.kinds[-1]
    yield (
        f"“{first.kind}” spun longest, {_time(first.middle)} ({_time(first.low)} to {_time(first.high)}), "
        f"“{last.kind}” shortest, {_time(last.middle)} ({_time(last.low)} to {_time(last.high)})."
    )
    shown = [pair for pair in log.pairs if pair.shown]
    if shown:
        each = "; ".join(f"“{p.longer}” {p.ratio:.2g} times as long as “{p.shorter}”" for p in shown)
        yield f"Shown ({len(shown)} of {len(log.pairs)} pairs): {each}."
    else:
        yield f"No difference between two kinds is shown ({len(log.pairs)} looked at)."
    if len(shown) < len(log.pairs):
        yield "The other differences may be chance: nothing is to be said of them to a customer."
    yield f"{_BASIS[log.basis]} ({log.freedom} degrees of freedom, Tukey’s intervals, 95 % for all pairs)."
    for part in log.parts:
        factor = float(2.718281828459045**part.deviation)
        yield f"Scatter {part.name}: a factor of {factor:.2f} up or down (one standard deviation)."
    if log.turned_over is not None:
        ratio, low, high = log.turned_over
        same = low <= 1 <= high
        said = "no difference is shown" if same else "the side matters"
        yield f"Turned over it spins {ratio:.2f} times as long ({low:.2f} to {high:.2f}): {said}."
    yield "What the bearings had run before, and their oil, is not in these times."


def _time(seconds: float) -> str:
    return quantities.show(seconds, "time")
