"""The drag stack: in its place between gear and star, and pulled apart on its axis."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from spoolwright.papers.materials_key import family
from spoolwright.papers.section import drive
from spoolwright.papers.section.measures import MM, Measures, is_main_gear, spring_room
from spoolwright.papers.section.shapes import Outline, Part, Shape, box_of, ring, stroke
from spoolwright.sheets.drag_stack import slipping_pairs
from spoolwright.sheets.sheet_tables import Washer

MOST_GAP = 14.0
"""A stack of few members is not pulled farther apart than this, mm."""


def washer_key(washer: Washer, place: int) -> str:
    """The key of the stack's member at this place, counted from the inner end, the first being 1."""
    return "main-gear" if is_main_gear(washer) else f"drag-{place}"


def cut_of(washer: Washer) -> str:
    """The hatch of a member of the stack."""
    return "steel" if washer.material == "bare metal" else family(washer.material)


def in_place(m: Measures) -> list[Part]:
    """The members between their neighbours, without names: those stand by the stack pulled apart."""
    if m.stack_on_spool:
        # It lies in the spool or beside it; the sheet does not say how deep.
        return []
    axis = m.drive_axis
    parts = []
    for place, (washer, left, right) in enumerate(m.stack_places, start=1):
        if is_main_gear(washer):
            continue
        shapes = ring(
            left,
            right,
            washer.inner_diameter * MM / 2,
            washer.outer_diameter * MM / 2,
            axis,
            cut=cut_of(washer),
            line="hair",
            crossed=bool(place % 2),
        )
        mark = ((left + right) / 2, axis - washer.outer_diameter * MM / 2)
        parts.append(Part(washer_key(washer, place), washer.name.capitalize(), "", shapes, mark))
    return parts


@dataclass(frozen=True)
class PulledApart:
    """The stack pulled apart: parts with names, marks where it slips, how many pairs, and its centre line."""

    parts: tuple[Part, ...]
    slips: tuple[Outline, ...]
    pairs: int
    line: Outline


def pulled_apart(m: Measures, axis: float, length: float) -> PulledApart | None:
    """The members spread over at most `length` from x = 0, equal gaps between them, springs at the end."""
    if not m.sheet.drag:
        return None
    widths = [_width(m, washer) for washer in m.stack]
    gap = min((length - sum(widths) - spring_room(m.sheet)) / len(widths), MOST_GAP)
    parts: list[Part] = []
    edges: list[tuple[float, float]] = []
    x = 0.0
    for place, (washer, width) in enumerate(zip(m.stack, widths, strict=True), start=1):
        parts.append(_member(m, washer, place, x, axis))
        edges.append((x, x + width))
        x += width + gap
    parts += _springs(m, x, axis)
    right = max(box_of(part.shapes)[2] for part in parts)
    slips, count = _slips(m, edges, axis, _radius(m))
    line = stroke((-4.0, axis), (right + 3.0, axis), line="chain")
    return PulledApart(tuple(parts), slips, count, line)


def _springs(m: Measures, left: float, axis: float) -> list[Part]:
    found = drive.springs(m, left, axis)
    if found is None:
        return []
    low = box_of(found.shapes)[3]
    return [replace(found, side="below", mark=(found.mark[0], low - 0.8))]


def _radius(m: Measures) -> float:
    """Radius of the largest member, the main gear's teeth among them."""
    gear = m.main_pitch + m.module if m.sheet.gears and not m.stack_on_spool else 0.0
    return max([gear, *(washer.outer_diameter * MM / 2 for washer in m.stack)])


def _width(m: Measures, washer: Washer) -> float:
    face = m.gear_faces[1] - m.gear_faces[0]
    return max(washer.thickness * MM, face) if is_main_gear(washer) else washer.thickness * MM


def _member(m: Measures, washer: Washer, place: int, left: float, axis: float) -> Part:
    outer, inner = washer.outer_diameter * MM / 2, washer.inner_diameter * MM / 2
    side = "below" if washer.turns_with == "neither" else "above"
    if is_main_gear(washer) and m.sheet.gears and not m.stack_on_spool:
        gear = drive.main_gear(m, left, axis)
        shapes: tuple[Shape, ...] = gear.shapes
        outer = m.main_pitch - 2 * m.module
    else:
        right = left + washer.thickness * MM
        shapes = ring(left, right, inner, outer, axis, cut=cut_of(washer), crossed=bool(place % 2))
        edges = (
            stroke((left, axis - inner), (left, axis + inner)),
            stroke((right, axis - inner), (right, axis + inner)),
        )
        shapes = (*shapes, *edges)
    middle = left + washer.thickness * MM / 2
    mark = (middle, axis + (outer if side == "below" else -outer) * 0.9)
    return Part(washer_key(washer, place), washer.name.capitalize(), washer.name, shapes, mark, side)


def _slips(
    m: Measures, edges: list[tuple[float, float]], axis: float, radius: float
) -> tuple[tuple[Outline, ...], int]:
    """A broken line in every gap where the stack slips, found from the order by the sheets' own rule."""
    if not m.sheet.drag:
        return (), 0
    pairs = slipping_pairs(m.sheet.drag.stack).pairs
    left_over = [(pair.lower, pair.upper) for pair in pairs]
    marks = []
    for (under, over), (first, second) in zip(pairwise(m.stack), pairwise(edges), strict=True):
        if (under.name, over.name) in left_over:
            left_over.remove((under.name, over.name))
            x = (first[1] + second[0]) / 2
            marks.append(stroke((x, axis - radius - 1.0), (x, axis + radius + 1.0), line="slip"))
    return tuple(marks), len(pairs)
