"""What does a predicted value rest on? Sheet, readings, works and priors, each in words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from math import pi

from spoolwright import quantities
from spoolwright.judgement import book_lessons, drag_train, free_spin
from spoolwright.judgement.book_lessons import Lesson
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import lubricants, materials
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.sheets.reel_sheet import ReelSheet

_DRAG_KINDS = ("pull_full", "pull_run", "pull_start", "drag_torque")
_NAMES = {
    "pull_full": "full pull",
    "pull_run": "running pull",
    "pull_start": "start-up pull",
    "drag_torque": "drag torque",
    "start_up_ratio": "start-up ratio",
    "judder": "unevenness",
    "spin_time": "free-spin time",
    "stop_time": "time to stop",
    "end_float": "end float",
    "handle_torque": "handle torque",
}
_RANGE_DIMENSIONS = {"start_up_ratio": "ratio", "judder": "ratio", "end_float": "length"}


@dataclass(frozen=True)
class Grounds:
    """The reasons behind one prediction, in the reader's units."""

    sheet: ReelSheet
    state: ReelState
    used: tuple[Taken, ...]
    works: tuple[str, ...]
    system: str = "metric"
    taught: Mapping[str, Lesson] = field(default_factory=dict)

    @property
    def sheet_words(self) -> str:
        return f"reel sheet of the {self.sheet.reel.maker} {self.sheet.reel.model}"

    def of_drag(self) -> tuple[str, ...]:
        """Why the pulls are expected to be what they are."""
        count = len(self.state.pairs)
        shape = "cam" if self.sheet.drag and self.sheet.drag.lever else "thread"
        pairs = f"{self.sheet_words}: {count} slipping pair{'' if count == 1 else 's'}, springs, {shape}"
        return (pairs, *self._friction(), *self._readings(_DRAG_KINDS), *self._works(_DRAG_KINDS))

    def of_star(self) -> tuple[str, ...]:
        """Why the pull at a turn of the star is expected to be what it is."""
        setting = setting_of(self.sheet)
        spare = f"how much of the {setting.control}'s travel is loose: judgement prior"
        if setting.is_lever:
            spare = (
                "preset as far on as leaves the spool free, plates just clear of one another: judgement prior"
            )
        return (*self.of_drag(), spare)

    def of_range(self, name: str) -> tuple[str, ...]:
        """Why a plain range is what it is."""
        held = self.state.ranges[name]
        span = quantities.show_interval(held.low, held.high, _RANGE_DIMENSIONS[name], self.system)
        said = f"{_NAMES[name]} from {span}"
        book = self._book(name)
        by = self._works((name,))
        # A reading taken before a work that renews the thing itself says nothing of the thing after it.
        own = by or self._readings((name,))
        return (f"{said} ({held.mark}){book}", *own)

    def of_spin(self) -> tuple[str, ...]:
        """Why the spool is expected to spin so long."""
        oil = lubricants.lubricant(self.state.bearing_lubricant)
        return (
            f"{self.sheet_words}: spool, {len(free_spin.spool_bearings(self.sheet))} bearings",
            f"{oil.title}; drag of bearings, ends and level wind (judgement prior){self._of_bearings()}",
            *self._readings(("spin_time", "stop_time")),
            *self._works(("spin_time",)),
        )

    def _of_bearings(self) -> str:
        return self._book("oil_factor") or self._book("grease_factor")

    def of_line(self, diameter: float, measured: bool) -> tuple[str, ...]:
        """Why so much line is expected to go on."""
        said = quantities.show(diameter, "length", self.system)
        line = f"your line of {said}" if measured else f"a line of {said}, as an example"
        return (self.sheet_words, line, "62 to 80 % of the room filled with line (judgement prior)")

    def pressure_warnings(self) -> tuple[str, ...]:
        """Faces that are pressed harder at full drag than the published figure for steady slip."""
        if self.sheet.drag is None:
            return ()
        force = drag_train.travel(self.sheet.drag).flat_force
        found: dict[str, str] = {}
        for pair in self.state.pairs:
            pressure = force / (pi * (pair.outer_radius**2 - pair.inner_radius**2))
            limit = materials.friction_material(pair.face_material).pressure_limit
            if pressure > limit.high and pair.face_material not in found:
                found[pair.face_material] = self._pressed(pair.face_material, pressure, limit.high)
        return tuple(found.values())

    def _pressed(self, material: str, pressure: float, limit: float) -> str:
        now = quantities.show(pressure, "pressure", self.system)
        most = quantities.show(limit, "pressure", self.system)
        return (
            f"At full drag the {material} is pressed with {now}; published for steady slip in industry: "
            f"{most}. A reel slips in bursts, so this is no limit, but long runs at full drag wear it."
        )

    def _friction(self) -> list[str]:
        said: dict[str, str] = {}
        for pair in self.state.pairs:
            name = drag_train.friction_name(pair.face_material, pair.lubrication)
            span = f"{pair.friction.low:.2f} to {pair.friction.high:.2f}"
            said[name] = f"friction of {name}: {span} ({pair.friction.how}){self._book(name)}"
        return list(said.values())

    def _book(self, draws: str) -> str:
        """What this shop has learned of it, where it has."""
        lesson = self.taught.get(draws)
        return f"; {book_lessons.said(lesson)}" if lesson else ""

    def _readings(self, kinds: Sequence[str]) -> list[str]:
        return [self._reading(one) for one in self.used if one.kind in kinds]

    def _reading(self, one: Taken) -> str:
        said = quantities.show(
            one.measured.value, one.measured.dimension, self.system, uncertainty=one.measured.expanded or None
        )
        radius, turns = one.number("radius"), one.number("star_turns")
        at = f" at {quantities.show(radius, 'length', self.system)}" if radius else ""
        star = f", {setting_of(self.sheet).stands(turns)}" if turns is not None else ""
        return f"your {_NAMES[one.kind]} reading of {said}{at}{star}"

    def _works(self, kinds: Sequence[str]) -> list[str]:
        """Works that are meant to move one of these readings."""
        known = all_works()
        moving = [known[name] for name in self.works if set(known[name].readings) & set(kinds)]
        return [f"work: {work.title.lower()} ({_marks(work.effects)})" for work in moving]


def _marks(effects: Sequence[object]) -> str:
    marks = {getattr(effect, "mark", "") for effect in effects} or {"no effect stated"}
    return "; ".join(sorted(marks))
