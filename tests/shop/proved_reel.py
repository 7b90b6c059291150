"""A reel on its sheet that came, was agreed, worked on for 48 minutes and proved: what the book reads."""

from __future__ import annotations

from typing import Any

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_work import Done, Labour, write_work
from tests.shop import walk

CARBON = "friction-woven-carbon-greased-new-discs"
FAULT = "fault-f15-round-multiplier"
WORKS = ("strip-and-wash", "carbon-drag-set")


def described(hand: Any) -> Any:
    """As far as the yes, with one finding."""
    visit = walk.agreed(hand)
    version = add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-58r"])
    describe_reel(hand=hand, reel=visit.reel, sheet_version=version, version=visit.reel.version)
    write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="tip worn")
    return visit


def proved(hand: Any, visit: Any, kilograms: float = 6.9) -> tuple[Any, Any]:
    """Worked on and proved: the entries of the proof and of the reading after the work."""
    before = walk.result(walk.read(hand, visit, "pull_full", 5.8 * walk.G, 0.05, "force"))
    write_work(hand=hand, visit=visit, labour=Labour([Done(name, name) for name in WORKS], 48))
    after = walk.result(walk.read(hand, visit, "pull_full", kilograms * walk.G, 0.05, "force"))
    pair = ProofPair(walk.promise_of("pull_full"), after, before)
    return prove(hand=hand, visit=visit, pairs=[pair]).entry, after.reading.entry
