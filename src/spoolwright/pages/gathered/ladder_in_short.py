"""A ladder in one plain line, for a quote and beside the picture: the drag, and what is weakest behind it."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.judgement.load_ladder import Ladder

CLOSE = 1.02
"""Within this of one another two limits are called even."""


def in_short(ladder: Ladder, system: str) -> str:
    """One sentence, or two where the drag asks for more than the reel carries; empty without a ladder."""
    drag, weakest = ladder.drag, ladder.weakest
    if drag is None or weakest is None:
        return ""
    pull = quantities.show_interval(drag.limit.low, drag.limit.high, "force", system)
    share = weakest.over.middle
    if share >= CLOSE:
        stands = f"gives {100 * (share - 1):.0f} % above that"
    elif share > 1 / CLOSE:
        stands = "gives at about the same pull"
    else:
        stands = f"gives {100 * (1 - share):.0f} % below that, before the drag slips"
    behind = f"the weakest part behind it, the {weakest.name}, {stands}"
    return f"The drag slips at {pull}; {behind}.{_asked(ladder, system)}"


def _asked(ladder: Ladder, system: str) -> str:
    if ladder.enough or ladder.most is None:
        return ""
    return f" Keep the drag under about {quantities.show(ladder.most.middle, 'force', system)}."
