"""What would have to change for this reel to give a pull that no turn of its star gives now?"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations

from spoolwright import quantities
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lessons
from spoolwright.judgement.how_far import too_far
from spoolwright.judgement.load_ladder import load_ladder
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.prediction import Predicted, predict
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import Work, all_works
from spoolwright.sheets.reel_sheet import ReelSheet

AT_ONCE = 2
"""Works are tried alone and in pairs; more at once is another reel."""


@dataclass(frozen=True)
class Way:
    """A set of works expected to reach the pull; `within_guard`: the load ladder lets us go so far."""

    works: tuple[Work, ...]
    pull: Predicted
    within_guard: bool
    words: str


def ways_to_reach(
    sheet: ReelSheet,
    readings: Readings,
    target_pull: float,
    *,
    samples: int = 2000,
    seed: int = 1,
    system: str = "metric",
    learned: Lessons = NOTHING_LEARNED,
) -> tuple[Way, ...]:
    """Works, alone or two together, after which the greatest pull is expected to reach a target.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's readings **[SI]**; none: a sound reel of the model.
    target_pull : float
        The pull wanted at a full spool **[N]**, more than 0.
    samples, seed : int
        Draws and start of the prediction **[-]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.
    learned : Lessons
        What the shop book has taught **[-]**.

    Returns
    -------
    tuple of Way
        Fewest works first; empty where nothing on the list reaches it. Sets that hold a smaller one are
        left out.

    Raises
    ------
    ValueError
        The pull is not more than 0.

    Source
    ------
    works.toml and `predict`; the guard is the load ladder's.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> ways = ways_to_reach(reel_sheet.load("tarvak-52"), {}, 12 * 4.4482216, samples=500)
    >>> [work.id for work in ways[0].works]
    ['under-gear-disc']
    """
    if not target_pull > 0:
        raise ValueError(f"target_pull: more than 0 is accepted; got {target_pull}")
    if sheet.drag is None:
        return ()
    sound = know(sheet, {}, samples=samples, seed=seed, learned=learned)
    built = predict(sheet, {}, known=sound).values.get("pull_full_spool")
    known = know(sheet, readings, samples=samples, seed=seed, learned=learned)
    found: list[Way] = []
    for works in _sets(sheet):
        ids = [work.id for work in works]
        if any({work.id for work in way.works} <= set(ids) for way in found):
            continue
        pull = predict(sheet, readings, ids, system=system, known=known).values.get("pull_full_spool")
        if pull is None or built is None or pull.middle < target_pull:
            continue
        past = too_far(load_ladder(sheet, works=ids, known=known, system=system), built, system)
        found.append(Way(works, pull, not past, _words(works, pull, not past, system)))
    return tuple(found)


def _sets(sheet: ReelSheet) -> list[tuple[Work, ...]]:
    stack = sheet.drag.stack if sheet.drag else ()
    # A stack that begins with anything but the gear has a face under the gear already.
    under = bool(stack) and stack[0].turns_with == "gear"
    able = [
        work
        for work in all_works().values()
        if "pull_full" in work.readings
        and sheet.reel.kind in work.kinds
        and (work.id != "under-gear-disc" or under)
    ]
    return [
        works
        for count in range(1, AT_ONCE + 1)
        for works in combinations(able, count)
        if not any(work.id in other.instead_of for work in works for other in works)
    ]


def _words(works: tuple[Work, ...], pull: Predicted, guarded: bool, system: str) -> str:
    span = quantities.show_interval(pull.low, pull.high, "force", system)
    names = " and ".join(work.title[0].lower() + work.title[1:] for work in works)
    warned = "" if guarded else "; further than we would take this model (see its load ladder)"
    return f"{names[0].upper()}{names[1:]}: {span} expected at a full spool{warned}."
