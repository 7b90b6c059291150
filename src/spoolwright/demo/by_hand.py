"""A part measured by hand in the invented workshop: with the long caliper, held against its limits."""

from __future__ import annotations

from typing import Any

from spoolwright.bench import typed
from spoolwright.demo import shelf
from spoolwright.demo.stay import Stay
from spoolwright.judgement import findings, hand_limits
from spoolwright.judgement.guard_band import call
from spoolwright.sheets import hand_guides, reading_kinds
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.take_by_hand import ByHand, take_by_hand
from spoolwright.shop.acts.take_reading import Value
from spoolwright.shop.questions.by_hand import KeptByHand
from spoolwright.shop.questions.instruments import marked


def measured(stay: Stay, sheet: ReelSheet, guide_id: str, text: str) -> Any:
    """The first part that the guide is for, as thick as the text says, with what its limits say."""
    guide = hand_guides.guide(guide_id)
    kind = reading_kinds.kind(guide.kind)
    part = hand_limits.parts_of(guide, sheet, findings.tags(sheet))[0]
    tool = marked(shelf.CALIPER)
    read = typed.read(kind.id, text, instrument=tool.measuring(kind.dimension) if tool else None)
    kept = KeptByHand(
        guide=guide.id,
        part=part.key,
        title=part.title,
        source=part.source,
        instrument=tool.called if tool else kind.tool,
        new=part.new,
        new_source=part.new_source,
        limits=part.limits,
        call=call(read.measured, part.limits) if part.limits else None,
        budget=read.budget,
    )
    result = Value(kind.id, read.measured.value, kind.dimension, read.measured.uncertainty, text)
    tries = [Value(kind.id, each, kind.dimension, repeat=k) for k, each in enumerate(read.tries, 1)]
    taken = ByHand([result, *(tries if len(tries) > 1 else [])], kept, tool.row if tool else None)
    with clock.as_of(stay.next_moment(2)):
        return take_by_hand(hand=stay.shop.torbal, visit=stay.visit, taken=taken, conditions={}).entry
