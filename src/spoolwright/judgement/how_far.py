"""How far may the drag of this reel be raised? As far as the parts behind it carry it with their margin."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright import quantities
from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.narrowing import Known
from spoolwright.judgement.prediction import Predicted

RAISED = 1.02
"""A pull that is no more than this above the build of the model is not called raised: judgement prior."""


def too_far(
    known: Known, works: Sequence[str], built: Predicted, given: Predicted, system: str = "metric"
) -> str:
    """A sentence where works raise the pull past what the parts behind the drag carry; else nothing.

    Parameters
    ----------
    known : Known
        The reel as it stands, with its sheet **[SI]**.
    works : sequence of str
        Ids of the works **[-]**.
    built : Predicted
        Greatest pull at a full spool of a sound reel of the model **[N]**.
    given : Predicted
        The same as the works would leave it **[N]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    str
        The sentence **[-]**; empty where the pull is not raised or the ladder allows it.

    Notes
    -----
    Works that do not raise the pull above the build are never held back by it, however weak the parts are.

    Source
    ------
    The load ladder; the margin that it asks for is a judgement prior.

    Examples
    --------
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.judgement.prediction import predict
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> works = ["carbon-drag-set", "under-gear-disc"]
    >>> built, given = (predict(sheet, {}, w, samples=500).values["pull_full_spool"] for w in ([], works))
    >>> too_far(know(sheet, {}, samples=500, seed=1), works, built, given).startswith("It would give about")
    True
    """
    if given.middle <= RAISED * built.middle:
        return ""
    ladder = load_ladder(known.sheet, works=works, known=known, system=system)
    return "" if ladder.enough else _words(ladder, given, system)


def _words(ladder: Ladder, given: Predicted, system: str) -> str:
    assert ladder.weakest is not None
    assert ladder.most is not None
    pull, most = (quantities.show(value, "force", system) for value in (given.middle, ladder.most.middle))
    return (
        f"It would give about {pull}; we take such a drag no further than about {most}. Behind it the "
        f"{ladder.weakest.name} would hold {ladder.weakest.over.middle:.2f} times the drag, and we ask for "
        f"{ladder.needed_words}."
    )
