"""What does a load ladder say in plain words?"""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoolwright import quantities
from spoolwright.judgement.line_rungs import WOUND
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
    found = [_first(ladder, system), _weakest(ladder.weakest, system), _enough(ladder, system)]
    if (tired := _tired(ladder, system)) is not None:
        found.append(tired)
    return (*found, *_of_line(ladder, system))


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
    >>> ladder.words[-2].startswith("These works take the drag's greatest from about")
    True
    """
    if now.weakest is None or before.weakest is None or now.drag is None or before.drag is None:
        return ()
    was, now_is = (quantities.show(one.limit.middle, "force", system) for one in (before.drag, now.drag))
    drag = f"These works take the drag's greatest from about {was} to about {now_is}."
    one, held = now.weakest, _over(before, now.weakest.part)
    if one.over.middle < 1.0:
        below = _percent(1 - one.over.middle)
        said = f"The weakest part of the whole reel is then the {one.name}, {below} below the drag"
    elif one.part == before.weakest.part:
        above = _percent(one.over.middle - 1)
        said = f"The weakest part behind the drag stays the same: the {one.name}, {above} above it"
    else:
        said = (
            f"The weakest part behind the drag was the {before.weakest.name}; it is now the {one.name}, "
            f"{_percent(one.over.middle - 1)} above it"
        )
    tail = "." if held is None else f"; before these works it stood {_above(held)}."
    return (drag, said + tail)


def _over(ladder: Ladder, part: str) -> float | None:
    return next((one.over.middle for one in ladder.rungs if one.part == part), None)


def _above(over: float) -> str:
    return f"{_percent(over - 1)} above" if over >= 1 else f"{_percent(1 - over)} below"


def _percent(share: float) -> str:
    return f"{100 * share:.0f} %"


def _first(ladder: Ladder, system: str) -> str:
    drag, weakest = ladder.drag, ladder.weakest
    assert drag is not None
    assert weakest is not None
    pull = _span(drag, system)
    if weakest.over.middle >= 1.0:
        return f"The drag gives first, as it should: set hard on, it slips at {pull}."
    return (
        f"The drag does not give first: set hard on, it slips at {pull}, and something else gives below that."
    )


def _weakest(one: Rung, system: str) -> str:
    low, high = one.over.low, one.over.high
    return (
        f"The weakest part behind it: the {one.name}. At {_span(one, system)} at the line {one.what_gives}. "
        f"That is {one.over.middle:.2f} times the drag's greatest ({low:.2f} to {high:.2f})."
    )


def _enough(ladder: Ladder, system: str) -> str:
    assert ladder.most is not None
    limit = quantities.show(ladder.most.middle, "force", system)
    if ladder.enough:
        return (
            f"We ask for {ladder.needed_words}. So this reel may be given about {limit} of drag and no more."
        )
    return (
        f"We ask for {ladder.needed_words}, and that is not there: keep the drag under about {limit}, or "
        "have that part made stronger."
    )


def _tired(ladder: Ladder, system: str) -> str | None:
    """A part that bears the drag's greatest pull now and then but not for its life."""
    drag = ladder.drag
    assert drag is not None
    held = [
        one
        for one in ladder.rungs
        if one.lasts is not None and one.lasts.middle < drag.limit.middle <= one.limit.middle
    ]
    if not held:
        return None
    names = [f"the {one.name}" for one in held]
    said = " and ".join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)
    lasts = min(one.lasts.middle for one in held if one.lasts is not None)
    shown = quantities.show(lasts, "force", system)
    return f"That is for a pull now and then. Day after day {said} may tire from about {shown} on."


def _of_line(ladder: Ladder, system: str) -> list[str]:
    set_at, one = ladder.drag_set, ladder.weakest_of_line
    if set_at is None:
        return []
    found = [f"For a line of {ladder.line} one sets the drag at {_span(set_at, system)}."]
    if one is not None:
        low, high = one.over.low, one.over.high
        found.append(
            f"First of what hangs on the line: the {one.name}, at {_span(one, system)}. "
            f"That is {one.over.middle:.2f} times the drag so set ({low:.2f} to {high:.2f})."
        )
    if any(held.part in WOUND and held.over.low < 1.0 for held in ladder.rungs):
        found.append(
            "Arbor and flanges feel how the line was wound on, not the pull of the moment, and nobody has "
            "measured how hard such a pack presses: wind it on no tighter than usual, best on a soft backing."
        )
    return found


def _span(one: Rung, system: str) -> str:
    return quantities.show_interval(one.limit.low, one.limit.high, "force", system)
