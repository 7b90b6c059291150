"""Long signals made short enough to keep and to draw, with every peak and trough still in them."""

from __future__ import annotations

from collections.abc import Sequence

MOST = 600
"""Points that a line across a page can show: more than it has dots on most screens."""


def thinned(times: Sequence[float], values: Sequence[float], most: int = MOST) -> list[tuple[float, float]]:
    """The least and the greatest point of each stretch of a signal.

    Parameters
    ----------
    times : sequence of float
        Moments of the samples [s], shape (n,).
    values : sequence of float
        The samples [any unit], shape (n,).
    most : int
        Points that may be kept [-], 2 or more.

    Returns
    -------
    list of tuple of float
        Pairs of moment [s] and sample [unit of `values`], in order, at most `most`.

    Raises
    ------
    ValueError
        Times and samples are not as many.

    Notes
    -----
    A signal that is short enough comes back whole.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> thinned([0, 1, 2, 3, 4, 5], [0, 9, 1, 2, -7, 3], most=2)
    [(1.0, 9.0), (4.0, -7.0)]
    """
    points = [(float(t), float(v)) for t, v in zip(times, values, strict=True)]
    if len(points) <= most:
        return points
    stretches = max(1, most // 2)
    kept: list[tuple[float, float]] = []
    for number in range(stretches):
        stretch = points[number * len(points) // stretches : (number + 1) * len(points) // stretches]
        ends = {min(stretch, key=lambda p: p[1]), max(stretch, key=lambda p: p[1])}
        kept.extend(sorted(ends))
    return kept
