"""What carries the pull after some works, in a line: the drag, and the weakest part behind it."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.judgement.load_ladder import Ladder
from spoolwright.judgement.prediction import Predicted

EVEN = 1.02
"""Within this of one another two limits are called even."""


@dataclass(frozen=True)
class Carried:
    """A ladder in short, to be kept with an option of a quote.

    `drag` is the drag's greatest pull [N], `weakest` the part behind it, `over` its limit over that pull,
    `enough` whether that is the margin that is asked for, `most` the pull that the drag may be raised to [N].
    """

    drag: Predicted
    weakest: str
    over: float
    enough: bool
    most: float


def carried(ladder: Ladder) -> Carried | None:
    """A ladder in short.

    Parameters
    ----------
    ladder : Ladder
        The ladder of a reel, as it is or after some works **[SI]**.

    Returns
    -------
    Carried or None
        Pulls **[N]**; None where the ladder has no meaning or no part of the reel on it.

    Source
    ------
    The load ladder.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> found = carried(load_ladder(reel_sheet.load("tarvak-58r"), samples=500))
    >>> found.over > 1, found.drag.dimension
    (True, 'force')
    """
    drag, weakest = ladder.drag, ladder.weakest
    if drag is None or weakest is None or ladder.most is None:
        return None
    return Carried(drag.limit, weakest.name, weakest.over.middle, ladder.enough, ladder.most.middle)


def in_words(found: Carried, system: str = "metric") -> str:
    """The same as one plain sentence, with a second where the drag asks for more than the reel carries.

    Parameters
    ----------
    found : Carried
        The ladder in short **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        Words for a customer **[-]**.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> from spoolwright.judgement.prediction import Predicted
    >>> drag = Predicted("drag", 60.0, 50.0, 70.0, 6.0, "force")
    >>> in_words(Carried(drag, "spool shaft", 1.5, True, 72.0))
    'The drag slips at 5.1 to 7.1 kg; the weakest part behind it, the spool shaft, gives 50 % above that.'
    """
    pull = quantities.show_interval(found.drag.low, found.drag.high, "force", system)
    most = quantities.show(found.most, "force", system)
    keep = "" if found.enough else f" Keep the drag under about {most}."
    behind = f"the weakest part behind it, the {found.weakest}, {_stands(found.over)}"
    return f"The drag slips at {pull}; {behind}.{keep}"


def _stands(over: float) -> str:
    if over >= EVEN:
        return f"gives {100 * (over - 1):.0f} % above that"
    if over > 1 / EVEN:
        return "gives at about the same pull"
    return f"gives {100 * (1 - over):.0f} % below that, before the drag slips"
