"""Which part gives first when the line pulls? Every part that carries the pull, the drag lowest."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypedDict, Unpack

import numpy as np

from spoolwright.judgement import drag_train, ladder_words
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.drive_rungs import drive_rungs
from spoolwright.judgement.frame_rungs import frame_rungs
from spoolwright.judgement.gear_rungs import gear_rungs
from spoolwright.judgement.hand_force import in_words
from spoolwright.judgement.line_check import HIGHEST_SHARE, LOWEST_SHARE
from spoolwright.judgement.line_rungs import WOUND, line_rungs
from spoolwright.judgement.line_said import SaidLine, read_line
from spoolwright.judgement.loads import Loads
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known, know, then
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.reel_state import ReelState, after
from spoolwright.judgement.rung import Limit, Rung, rung
from spoolwright.judgement.spool_rungs import spool_rungs
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import chosen
from spoolwright.sheets.reel_sheet import ReelSheet

AT_LEAST = 1.25
"""What the weakest part has to hold over the drag's greatest running pull: judgement prior. Where a drag
starts harder than that, the start-up ratio takes its place: the parts feel the start, not the running."""

SAMPLES = 2000

PARTS: tuple[Callable[[Loads], list[Limit]], ...] = (
    line_rungs,
    gear_rungs,
    drive_rungs,
    spool_rungs,
    frame_rungs,
)


class Drawn(TypedDict, total=False):
    """How many draws, and where the generator starts."""

    samples: int
    seed: int


@dataclass(frozen=True)
class Ladder:
    """The parts that carry the pull, the one that gives first at the head of the list.

    `drag` is the greatest usable pull at this fill; `drag_set` the drag as one sets it for the line, where a
    line is named (else None). `weakest` is the part of the reel that gives first behind the drag, `margin`
    its limit over the drag's greatest pull and `needed` what that has to be at the least, with
    `needed_words`; `weakest_of_line` the same among what hangs on the line. `drag_first`: no part gives
    before the drag, by the middles, what feels the winding set aside; `enough`: the margin is what it has to
    be; `chance`: share of the draws in which no part of the reel gives before the drag. `most` is the pull
    that the drag may be raised to: the weakest part's limit over `needed`. `before` is the ladder without
    the works, where there are any. Where a ladder has no meaning `why_not` says why and all else is empty.
    """

    rungs: tuple[Rung, ...]
    drag: Rung | None
    drag_set: Rung | None
    weakest: Rung | None
    margin: Predicted | None
    needed: float
    needed_words: str
    weakest_of_line: Rung | None
    drag_first: bool
    enough: bool
    chance: float
    most: Predicted | None
    before: Ladder | None
    line: str
    fill: float
    radius: float
    works: tuple[str, ...]
    words: tuple[str, ...]
    notes: tuple[str, ...]
    samples: int
    seed: int
    why_not: str = ""


def load_ladder(
    sheet: ReelSheet,
    readings: Readings | None = None,
    works: Sequence[str] = (),
    *,
    line: str = "",
    fill: float = 1.0,
    system: str = "metric",
    known: Known | None = None,
    **drawn: Unpack[Drawn],
) -> Ladder:
    """The load ladder of a reel, as it is or as some works would leave it.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken, or None
        This reel's own readings by kind **[SI]**; none: a sound reel of this model is meant.
    works : sequence of str
        Ids of works **[-]**; none: the reel as it is.
    line : str
        The line on it **[-]**, such as "nylon 0.40 mm" or "braid 0.25 mm 20 kg"; empty: no line is reckoned.
    fill : float
        Share of a full spool's line that is left **[-]**, 0 to 1.
    system : str
        "metric" or "imperial" **[-]**, for the words.
    known : Known or None
        What `know` made of the same sheet and readings, so that several sets of works share it **[SI]**.
    **drawn : int
        `samples` (2000, at the least 100) and `seed` (1) of the draws **[-]**, where `known` does not set
        them.

    Returns
    -------
    Ladder
        Rungs sorted by their middle, pulls **[N]**.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel; a fill outside 0 to 1; fewer than 100
        samples.
    NotAQuantity
        The line is not one that we know.

    Notes
    -----
    A part of the reel is held against the drag's greatest pull, since the star can be turned that far. What
    hangs on the line is held against the drag as it is set for that line, a quarter to a third of its
    strength and no more than the drag gives: a line weaker than the drag's greatest is usual and right, for
    then the set drag protects the line, and the line the reel. Works change the drag; a work that changes a
    part changes its rung.

    Source
    ------
    The rungs' own files name theirs; the 1.25 is a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> ladder = load_ladder(reel_sheet.load("tarvak-58r"), samples=500)
    >>> ladder.drag_first, ladder.rungs[0].part
    (True, 'drag')
    """
    said = read_line(line) if line.strip() else None
    radius = drag_train.radius_at_fill(sheet, fill)
    samples, seed = drawn.get("samples", SAMPLES), drawn.get("seed", 1)
    known = known or know(sheet, readings or {}, samples=samples, seed=seed)
    asked = _Asked(sheet, known, said, fill, radius, system)
    now = _ladder(asked, tuple(works))
    if not works or now.why_not:
        return now
    before = _ladder(asked, ())
    return replace(now, before=before, words=(*now.words, *ladder_words.changed(now, before, system)))


@dataclass(frozen=True)
class _Asked:
    sheet: ReelSheet
    known: Known
    line: SaidLine | None
    fill: float
    radius: float
    system: str


def _ladder(asked: _Asked, works: tuple[str, ...]) -> Ladder:
    sheet, known = asked.sheet, asked.known
    done = chosen(works, sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    asked = replace(asked, sheet=sheet)
    if sheet.drag is None or not state.pairs:
        return _none(asked, works)
    draws = then(known, state)
    loads = Loads(sheet, state, asked.radius, draws, known.samples, known.seed, asked.line, asked.system)
    greatest = _greatest(asked, state, draws)
    limits = [limit for part in PARTS for limit in part(loads)]
    drag = rung(_drag_limit(greatest), greatest)
    set_at = _set_for(loads, greatest)
    of_reel = [rung(limit, greatest) for limit in limits if limit.borne == "reel"]
    of_line = [rung(limit, set_at) for limit in limits if limit.borne == "line" and set_at is not None]
    drag_set = rung(_set_limit(loads, set_at), set_at) if set_at is not None else None
    weakest = min(of_reel, key=_middle, default=None)
    weakest_of_line = min(of_line, key=_middle, default=None)
    needed, why = _needed(draws["start_up_ratio"])
    lowest = np.min([limit.pull for limit in limits if limit.borne == "reel"], axis=0) if of_reel else None
    found = Ladder(
        rungs=tuple(sorted([drag, *([drag_set] if drag_set else []), *of_reel, *of_line], key=_middle)),
        drag=drag,
        drag_set=drag_set,
        weakest=weakest,
        margin=weakest.over if weakest else None,
        needed=needed,
        needed_words=why,
        weakest_of_line=weakest_of_line,
        drag_first=all(one.over.middle >= 1.0 for one in (*of_reel, *of_line) if one.part not in WOUND),
        enough=weakest is None or weakest.over.middle >= needed,
        chance=1.0 if lowest is None else float(np.mean(lowest >= greatest)),
        most=_over(weakest.limit, needed) if weakest else None,
        before=None,
        line=asked.line.words_in(asked.system) if asked.line else "",
        fill=asked.fill,
        radius=asked.radius,
        works=works,
        words=(),
        notes=known.notes,
        samples=known.samples,
        seed=known.seed,
    )
    hand = in_words(sheet, drag.limit.middle, asked.radius, asked.system)
    return replace(found, words=(*ladder_words.told(found, asked.system), *hand))


def _over(limit: Predicted, needed: float) -> Predicted:
    return Predicted(
        "the most that the drag of this reel may give",
        limit.middle / needed,
        limit.low / needed,
        limit.high / needed,
        limit.deviation / needed,
        "force",
        rests_on=limit.rests_on,
    )


def _middle(one: Rung) -> float:
    return one.limit.middle


def _greatest(asked: _Asked, state: ReelState, draws: Mapping[str, Sample]) -> Sample:
    assert asked.sheet.drag is not None
    clamp, _ = drag_train.greatest_clamp(asked.sheet.drag, draws, draws["spring_force"])
    return drag_train.spool_torque(asked.sheet, state, draws, clamp) / asked.radius


def _drag_limit(greatest: Sample) -> Limit:
    return Limit(
        "drag",
        "drag, at its greatest",
        "the drag slips and gives line",
        greatest,
        "plate-clutch formula, as the prediction of the pull",
        "friction, springs and hand with their marks as in the prediction",
        "drag",
    )


def _set_for(loads: Loads, greatest: Sample) -> Sample | None:
    if loads.line is None:
        return None
    held = loads.line.strength
    share = loads.between("drag set at a share of the line", LOWEST_SHARE, HIGHEST_SHARE)
    return np.asarray(np.minimum(share * loads.of("line", held), greatest))


def _set_limit(loads: Loads, set_at: Sample) -> Limit:
    return Limit(
        "drag set",
        "drag, as it is set for this line",
        "the drag slips and gives line, as it should",
        set_at,
        "a quarter to a third of the line's strength without a knot, no more than the drag gives",
        "common practice, no source",
        "drag",
    )


def _needed(start_up: Sample) -> tuple[float, str]:
    starts = float(np.median(start_up))
    if starts <= AT_LEAST:
        return AT_LEAST, f"{AT_LEAST:g} times the drag's greatest pull (judgement prior)"
    return starts, f"{starts:.2f} times the drag's greatest pull, since this drag starts so much harder"


def _none(asked: _Asked, works: tuple[str, ...]) -> Ladder:
    return Ladder(
        rungs=(),
        drag=None,
        drag_set=None,
        weakest=None,
        margin=None,
        needed=AT_LEAST,
        needed_words="",
        weakest_of_line=None,
        drag_first=False,
        enough=False,
        chance=0.0,
        most=None,
        before=None,
        line=asked.line.words_in(asked.system) if asked.line else "",
        fill=asked.fill,
        radius=asked.radius,
        works=works,
        words=(),
        notes=asked.known.notes,
        samples=asked.known.samples,
        seed=asked.known.seed,
        why_not="This reel has no drag of slipping discs: nothing in it gives before the line or the hand "
        "does, so there is no ladder to sort.",
    )
