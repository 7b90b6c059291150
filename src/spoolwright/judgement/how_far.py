"""How far may the drag of this reel be raised? As far as the parts behind it carry it with their margin."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.judgement.load_ladder import Ladder
from spoolwright.judgement.prediction import Predicted

RAISED = 1.02
"""A pull that is no more than this above the build of the model is not called raised: judgement prior."""


def too_far(ladder: Ladder | None, built: Predicted | None, system: str = "metric") -> str:
    """A sentence where works raise the pull past what the parts behind the drag carry; else nothing.

    Parameters
    ----------
    ladder : Ladder or None
        The ladder that the works would leave, at a full spool **[SI]**.
    built : Predicted or None
        Greatest pull at a full spool of a sound reel of the model **[N]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    str
        The sentence **[-]**; empty where the pull is not raised, the ladder allows it, or there is none.

    Notes
    -----
    Works that do not raise the pull above the build are never held back by it, however weak the parts are.

    Source
    ------
    The load ladder; the margin that it asks for is a judgement prior.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> both = load_ladder(sheet, works=["carbon-drag-set", "under-gear-disc"], samples=500)
    >>> too_far(both, both.before.drag.limit).startswith("The drag would give about")
    True
    """
    if ladder is None or built is None or ladder.drag is None or ladder.enough:
        return ""
    if ladder.drag.limit.middle <= RAISED * built.middle:
        return ""
    return _words(ladder, system)


def _words(ladder: Ladder, system: str) -> str:
    assert ladder.drag is not None
    assert ladder.weakest is not None
    assert ladder.most is not None
    pull, most = (quantities.show(one.middle, "force", system) for one in (ladder.drag.limit, ladder.most))
    return (
        f"The drag would give about {pull}, and the {ladder.weakest.name} behind it would hold only "
        f"{ladder.weakest.over.middle:.2f} times that. We ask for {ladder.needed_words}, so we would go no "
        f"further than about {most}."
    )
