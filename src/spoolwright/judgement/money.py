"""Money in whole minor units, and the one way in which this house rounds."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction


def half_up(exact: Fraction) -> int:
    """Round an exact amount to whole minor units, halves away from zero, so that a credit mirrors its bill.

    Parameters
    ----------
    exact : Fraction
        Amount before rounding **[minor unit]**, any sign.

    Returns
    -------
    int
        Amount **[minor unit]**.

    Notes
    -----
    floor(|x| + 1/2) with the sign of x; never through a float, where 2.675 is less than it looks.

    Source
    ------
    Streamlined Sales and Use Tax Agreement, s. 324 (half up at the cent), from memory.

    Examples
    --------
    >>> half_up(Fraction(5, 2)), half_up(Fraction(-5, 2))
    (3, -3)
    """
    size = (abs(exact) + Fraction(1, 2)).__floor__()
    return size if exact >= 0 else -size


def shared_out(total: int, weights: Sequence[int]) -> tuple[int, ...]:
    """Split a whole amount over lines by weight so that the shares add back exactly.

    Parameters
    ----------
    total : int
        Amount to split **[minor unit]**, any sign.
    weights : sequence of int
        Weight of each line **[-]**; a discount line weighs negative; a sum of zero splits evenly.

    Returns
    -------
    tuple of int
        Share of each line **[minor unit]**, shape `(len(weights),)`.

    Raises
    ------
    ValueError
        There is an amount and no line to put it on.

    Notes
    -----
    Whole parts first, then one unit each to the largest remainders, earlier lines first.

    Source
    ------
    Largest-remainder method (Hamilton), from memory.

    Examples
    --------
    >>> shared_out(20, [33, 33, 33])
    (7, 7, 6)
    """
    if not weights:
        if total:
            raise ValueError(f"weights: at least one line is needed to carry {total}")
        return ()
    sign = -1 if total < 0 else 1
    used = list(weights) if sum(weights) else [1] * len(weights)
    exact = [Fraction(abs(total) * weight, sum(used)) for weight in used]
    shares = [part.__floor__() for part in exact]
    by_remainder = sorted(range(len(used)), key=lambda i: (shares[i] - exact[i], i))
    for i in by_remainder[: abs(total) - sum(shares)]:
        shares[i] += 1
    return tuple(sign * share for share in shares)


def show(minor: int, mark: str = "kr", minor_per_major: int = 100) -> str:
    """Money in words of the counter: thousands with a comma, decimals with a point.

    Parameters
    ----------
    minor : int
        Amount **[minor unit]**, any sign.
    mark : str
        What stands behind the amount **[-]**, such as kr or USD.
    minor_per_major : int
        Minor units in one major unit **[-]**, a power of ten from 1 on.

    Returns
    -------
    str
        Text **[-]**.

    Source
    ------
    ISO 4217 gives the number of decimals of each currency, from memory.

    Examples
    --------
    >>> show(126960)
    '1,269.60 kr'
    >>> show(-500, "JPY", 1)
    '-500 JPY'
    """
    decimals = len(str(minor_per_major)) - 1
    major, rest = divmod(abs(minor), minor_per_major)
    tail = f".{rest:0{decimals}d}" if decimals else ""
    return f"{'-' if minor < 0 else ''}{major:,}{tail} {mark}"
