"""Which part gives first when the line pulls? Every part that carries the pull, and the drag below them all."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.rung import Rung


@dataclass(frozen=True)
class Ladder:
    """The parts that carry the pull, the one that gives first at the head of the list.

    `drag` is the greatest usable pull at this fill; `drag_set` the drag as one sets it for the line, where a
    line is named (else None). `weakest` is the part of the reel that gives first behind the drag, `margin` its
    limit over the drag's greatest pull and `needed` what that has to be at the least; `weakest_of_line` the
    same among what hangs on the line. `drag_first` and `enough` say how it stands. `before` is the weakest
    part without the works. Where a ladder has no meaning `why_not` says why and everything else is empty.
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
    before: Rung | None
    line: str
    fill: float
    radius: float
    works: tuple[str, ...]
    words: tuple[str, ...]
    notes: tuple[str, ...]
    samples: int
    seed: int
    why_not: str = ""
