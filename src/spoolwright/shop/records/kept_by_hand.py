"""What is kept of a part measured by hand: which part, what it was held against, and what was said of it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.judgement.guard_band import Call, Limits

_SAID = ("verdict", "good", "wrong", "guard", "rule")


@dataclass(frozen=True)
class KeptByHand:
    """One part: its guide, its size when new [SI], its limits, the verdict, and the rows of its uncertainty.

    `limits` and `call` are None where no limit is known.
    """

    guide: str
    part: str
    title: str
    source: str
    instrument: str
    new: float | None = None
    new_source: str = ""
    limits: Limits | None = None
    call: Call | None = None
    budget: tuple[Contribution, ...] = ()

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "by hand",
            "guide": self.guide,
            "part": self.part,
            "title": self.title,
            "source": self.source,
            "instrument": self.instrument,
            "new": [self.new, self.new_source],
            "limits": _ends(self.limits) if self.limits else None,
            "call": _call(self.call) if self.call else None,
            "budget": [[r.result, r.source, r.way, float(r.uncertainty)] for r in self.budget],
        }


def from_data(data: Mapping[str, Any]) -> KeptByHand | None:
    """What was kept, or None where the data holds something else."""
    if data.get("signal") != "by hand":
        return None
    ends, said = data["limits"], data["call"]
    return KeptByHand(
        guide=data["guide"],
        part=data["part"],
        title=data["title"],
        source=data["source"],
        instrument=data["instrument"],
        new=data["new"][0],
        new_source=data["new"][1],
        limits=Limits(_or(ends[0], -math.inf), _or(ends[1], math.inf), ends[2], ends[3]) if ends else None,
        call=Call(*(said[key] for key in _SAID)) if said else None,
        budget=tuple(Contribution(*row) for row in data["budget"]),
    )


def _ends(limits: Limits) -> list[float | None]:
    """An end without a limit is kept as none: infinity is no number in JSON."""
    ends = (limits.low, limits.high, limits.reject_low, limits.reject_high)
    return [end if end is not None and math.isfinite(end) else None for end in ends]


def _call(said: Call) -> dict[str, Any]:
    row = (said.verdict, said.chance_good, said.chance_wrong, said.guard, said.rule)
    return dict(zip(_SAID, row, strict=True))


def _or(end: float | None, otherwise: float) -> float:
    return otherwise if end is None else end
