"""What does a load ladder say in plain words?"""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoolwright import quantities
from spoolwright.judgement.rung import Rung

if TYPE_CHECKING:
    from spoolwright.judgement.load_ladder import Ladder


def told(ladder: Ladder, system: str = "metric") -> tuple[str, ...]:
    """How the reel stands: what gives first, the weakest part behind the drag, what the line does.

    Parameters
    ----------
    ladder : Ladder
        The ladder **[SI]**.
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
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> load_ladder(reel_sheet.load("tarvak-58r"), samples=500).words[0][:30]
    'The drag gives first, as it sh'
    """
    if ladder.weakest is None or ladder.drag is None:
        return ()
    found = [_first(ladder, system), _weakest(ladder, system), _enough(ladder, system)]
    if ladder.drag_set is not None:
        found.extend(_of_line(ladder, system))
    return tuple(found)


def changed(now: Ladder, before: Ladder, system: str = "metric") -> tuple[str, ...]:
    """What works have done to the ladder: which part has become the weakest, and by how much.

    Parameters
    ----------
    now : Ladder
        The ladder with the works **[SI]**.
    before : Ladder
        The ladder without them **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences **[-]**; none where there is nothing to compare.

    Source
    ------
    Our own words.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> ladder = load_ladder(reel_sheet.load("tarvak-58r"), {}, ["carbon-drag-set"], samples=500)
    >>> "the drag's greatest goes from" in ladder.words[-1]
    True
    """
    if now.weakest is None or before.weakest is None or now.drag is None or before.drag is None:
        return ()
    pulls = [_pull(one.limit.middle, system) for one in (before.drag, now.drag)]
    same = now.weakest.part == before.weakest.part
    who = "stays the weakest part" if same else f"becomes the weakest part, where it was the {_who(before.weakest)}"
    return (
        f"With these works the drag's greatest goes from about {pulls[0]} to about {pulls[1]}; "
        f"the {_who(now.weakest)} {who}: it held {_times(_of(before, now.weakest))} the drag before "
        f"and holds {_times(now.weakest.over.middle)} of it after.",
    )


def _of(ladder: Ladder, one: Rung) -> float:
    return next((held.over.middle for held in ladder.rungs if held.part == one.part), float("nan"))


def _first(ladder: Ladder, system: str) -> str:
    assert ladder.drag is not None
    assert ladder.weakest is not None
    pull = _span(ladder.drag, system)
    if ladder.weakest.over.middle >= 1.0:
        return f"The drag gives first, as it should: at its greatest it slips at {pull}."
    return f"The drag does not give first: at its greatest it slips at {pull}, and the {_who(ladder.weakest)} gives before."


def _weakest(ladder: Ladder, system: str) -> str:
    one = ladder.weakest
    assert one is not None
    return (
        f"The weakest part behind it is the {_who(one)}: at {_span(one, system)} at the line {one.what_gives}. "
        f"That is {_times(one.over.middle)} the drag's greatest ({one.over.low:.2f} to {one.over.high:.2f})."
    )


def _enough(ladder: Ladder, system: str) -> str:
    assert ladder.most is not None
    limit = _pull(ladder.most.middle, system)
    if ladder.enough:
        return f"Asked for is {ladder.needed_words}; so this reel may be given about {limit} of drag and no more."
    return (
        f"Asked for is {ladder.needed_words}: that is not there. Keep the drag under about {limit}, or make the "
        "part stronger."
    )


def _of_line(ladder: Ladder, system: str) -> list[str]:
    assert ladder.drag_set is not None
    one = ladder.weakest_of_line
    found = [f"For {ladder.line} one sets the drag at {_span(ladder.drag_set, system)}."]
    if one is not None:
        at = _span(one, system)
        found.append(
            f"Of what hangs on the line the {_who(one)} gives first, at {at}: {_times(one.over.middle)} the drag so set."
        )
    return found


def _who(one: Rung) -> str:
    return one.name


def _span(one: Rung, system: str) -> str:
    return quantities.show_interval(one.limit.low, one.limit.high, "force", system)


def _pull(value: float, system: str) -> str:
    return quantities.show(value, "force", system)


def _times(value: float) -> str:
    return f"{value:.2f} times"
