"""How many faces of a drag stack slip, derived from the order in which its members lie.

A boundary slips only where its two sides turn with different members. A loose washer, or several in a row,
between two such sides has several faces but gives one slipping pair: the weaker face slips, the others hold.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from spoolwright.sheets import materials
from spoolwright.sheets.sheet_tables import Washer
from spoolwright.sheets.sourced import Sourced


@dataclass(frozen=True)
class Pair:
    """Two faces that slip on one another. `lower` lies earlier in the stack than `upper`."""

    lower: str
    upper: str
    face_material: str
    lubrication: str
    outer_radius: float
    inner_radius: float
    friction: Sourced
    start_ratio: Sourced

    @property
    def effective_radius(self) -> float:
        """Mean radius of a worn-in face [m]."""
        return (self.outer_radius + self.inner_radius) / 2


@dataclass(frozen=True)
class StackReading:
    """What the order of a stack comes to: its slipping pairs, and in words what is odd about it."""

    pairs: tuple[Pair, ...]
    warnings: tuple[str, ...]


def slipping_pairs(stack: Sequence[Washer]) -> StackReading:
    """The slipping pairs of a drag stack, in the order of the stack, with warnings in words."""
    fixed = [place for place, washer in enumerate(stack) if washer.turns_with != "neither"]
    pairs: list[Pair] = []
    warnings: list[str] = []
    for start, end in pairwise(fixed):
        run = stack[start : end + 1]
        if run[0].turns_with == run[-1].turns_with:
            warnings.extend(_nothing_slips(run))
            continue
        pair = _weakest(run)
        warnings.extend(_odd(run, pair))
        if pair is not None:
            pairs.append(pair)
    warnings.extend(_ends(stack, fixed))
    if not pairs:
        warnings.append("No face of this stack slips: the drag is nothing, then locked.")
    return StackReading(tuple(pairs), tuple(warnings))


def _weakest(run: Sequence[Washer]) -> Pair | None:
    """The face with the least friction times radius; where two are equal the lower one is named."""
    faces = [face for below, above in pairwise(run) if (face := _face(below, above)) is not None]
    if len(faces) < len(run) - 1:
        return None
    return min(faces, key=lambda face: face.friction.middle * face.effective_radius)


def _face(below: Washer, above: Washer) -> Pair | None:
    outer = min(below.outer_diameter, above.outer_diameter) / 2
    inner = max(below.inner_diameter, above.inner_diameter) / 2
    if inner >= outer:
        return None
    material = _face_material(below, above)
    wet = _lubrication(below, above, material)
    entry = materials.friction_material(material)
    return Pair(
        lower=below.name,
        upper=above.name,
        face_material=material,
        lubrication=wet,
        outer_radius=outer,
        inner_radius=inner,
        friction=entry.friction(wet),
        start_ratio=entry.start_ratio(wet),
    )


def _face_material(below: Washer, above: Washer) -> str:
    """The friction material of the face; of two, the one that gives less."""
    known = [w for w in (below, above) if _is_friction(w)]
    if not known:
        return materials.BARE_METAL
    weakest = min(known, key=lambda w: materials.friction_material(w.material).friction(w.lubrication).middle)
    return weakest.material


def _lubrication(below: Washer, above: Washer, material: str) -> str:
    """The friction disc says whether its faces are greased; between two metals grease on either counts."""
    told = [w.lubrication for w in (below, above) if material in (w.material, materials.BARE_METAL)]
    return "greased" if "greased" in told else "dry"


def _is_friction(washer: Washer) -> bool:
    return washer.material in materials.friction_names()


def _nothing_slips(run: Sequence[Washer]) -> list[str]:
    below, above = run[0], run[-1]
    both = f"“{below.name}” and “{above.name}” both turn with the {below.turns_with}"
    if len(run) > 2:
        idle = " and ".join(f"“{washer.name}”" for washer in run[1:-1])
        return [f"{both}: {idle} between them cannot slip and one pair is lost."]
    if _is_friction(below) or _is_friction(above):
        return []
    touch = f"{both} and touch with no friction disc between: they give no pair"
    return [f"{touch}, and the drag goes from nothing to locked."]


def _odd(run: Sequence[Washer], pair: Pair | None) -> list[str]:
    below, above = run[0], run[-1]
    if pair is None:
        return [f"The faces from “{below.name}” to “{above.name}” do not meet: no pair there."]
    if pair.face_material == materials.BARE_METAL:
        text = f"“{pair.lower}” runs on “{pair.upper}”, metal on metal with no friction disc between"
        return [f"{text}: it grabs, galls and gives little."]
    return []


def _ends(stack: Sequence[Washer], fixed: Sequence[int]) -> list[str]:
    """Friction discs outside the outermost fixed members have nothing to slip against."""
    if not fixed:
        return ["No member of this stack turns with anything."]
    loose = [*stack[: fixed[0]], *stack[fixed[-1] + 1 :]]
    found = [f"“{washer.name}” lies outside the last fixed disc and gives no pair." for washer in loose]
    last = stack[fixed[-1]]
    if last.turns_with == "gear":
        found.append(f"“{last.name}” is last before the springs but turns with the gear: they rub on it.")
    return found
