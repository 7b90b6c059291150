"""Where everything in the section lies, in millimetres, worked out from a reel sheet.

What the sheet does not say (the form of a star, a knob, a cap) is taken by custom and drawn with a broken
line; those sizes are the constants here.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Bearing, Washer

MM = 1000.0
FLANGE_WALL = 1.6
SHAFT_RADIUS = 2.0
DRIVE_RADIUS = 3.5
PLATE_WALL = 2.0
RIM_ROOM = 2.5
"""Room between the spool's rim and the frame, where the sheet says nothing of it."""
RIM_GAP = 1.6
"""Room between the spool's rim and a pillar."""
THUMB_BAR = 4.0
"""Thickness of the thumb bar of a low-profile reel, with its clearance."""
END_ROOM = 1.0
"""Room between members that do not touch."""
STAR_WIDTH, STAR_RADIUS = 3.5, 15.0
ARM_WIDTH, NUT_WIDTH, NUT_RADIUS = 2.5, 2.5, 5.0
KNOB_LENGTH, KNOB_RADIUS = 19.0, 6.0
CLUTCH_WIDTH, CLUTCH_WALL = 8.0, 3.5
COG_WIDTH, COG_GAP = 1.6, 0.5


@dataclass(frozen=True)
class Measures:
    """The stations of one reel, all in mm; `sheet` is where they come from."""

    sheet: ReelSheet

    @cached_property
    def half_width(self) -> float:
        return self.sheet.spool.width * MM / 2

    @cached_property
    def arbor(self) -> float:
        return self.sheet.spool.arbor_radius * MM

    @cached_property
    def rim(self) -> float:
        return self.sheet.spool.flange_diameter * MM / 2

    @cached_property
    def full(self) -> float:
        return self.sheet.spool.full_radius * MM

    @cached_property
    def wall(self) -> float:
        return (self.sheet.spool.wall or FLANGE_WALL / MM) * MM

    @cached_property
    def spool_end(self) -> float:
        """Outer face of a flange."""
        return self.half_width + self.wall

    @cached_property
    def shaft_radius(self) -> float:
        return self.sheet.shaft.diameter * MM / 2 if self.sheet.shaft else SHAFT_RADIUS

    @cached_property
    def stack_on_spool(self) -> bool:
        return bool(self.sheet.drag and self.sheet.drag.acts_on == "spool")

    @cached_property
    def plate_in(self) -> float:
        """Inner face of a side plate, never inside the spool."""
        frame = self.sheet.frame
        said = frame.plate_spacing * MM / 2 if frame else 0.0
        return max(said, self.spool_end + 0.05)

    @cached_property
    def plate_wall(self) -> float:
        return self.sheet.frame.plate_thickness * MM if self.sheet.frame else PLATE_WALL

    @cached_property
    def plate_out(self) -> float:
        return self.plate_in + self.plate_wall

    @cached_property
    def stack(self) -> tuple[Washer, ...]:
        """The stack without the spool, which is drawn where it is."""
        washers = self.sheet.drag.stack if self.sheet.drag else ()
        return tuple(washer for washer in washers if washer.turns_with != "spool" or not is_spool(washer))

    @cached_property
    def spool_bearings(self) -> tuple[tuple[Bearing, float], ...]:
        """Bearings of the spool with the middle of each: the off side in its plate, the other a span away."""
        own = [b for b in self.sheet.bearings if _words(b, "spool")]
        if not own:
            return ()
        off = next((b for b in own if _words(b, "off side", "palm", "left", "far")), own[-1])
        gear = next((b for b in own if b is not off), None)
        if self.sheet.shaft and self.sheet.shaft.borne == "fixed, spool on its bearings":
            first = -self.spool_end + off.size.width * MM / 2
        else:
            first = -(self.plate_in + 0.5 + off.size.width * MM / 2)
        if gear is None:
            return ((off, first),)
        span = self.sheet.shaft.span * MM if self.sheet.shaft else -2 * first
        return (off, first), (gear, first + span)

    @cached_property
    def shaft_ends(self) -> tuple[float, float]:
        if not self.spool_bearings:
            return -self.plate_out, self.plate_out
        ends = [(x - b.size.width * MM / 2, x + b.size.width * MM / 2) for b, x in self.spool_bearings]
        cog = COG_GAP + COG_WIDTH if self.sheet.level_wind else 0.0
        left, right = min(a for a, _ in ends) - 1.2 - cog, max(b for _, b in ends) + 1.2
        return min(left, -self.spool_end - 1.0), max(right, self.spool_end + 1.0)

    # --- gears and what turns on the drive shaft -------------------------------------------------

    @cached_property
    def drive_axis(self) -> float:
        """How far below the spool's axis the drive shaft lies; 0 where there is none."""
        return self.centre_distance if self.sheet.gears and not self.crossed_axes else 0.0

    @cached_property
    def crossed_axes(self) -> bool:
        """A fixed spool's drive shaft crosses the spool's axis and is seen end on."""
        return self.sheet.reel.kind == "fixed spool"

    @cached_property
    def centre_distance(self) -> float:
        return self.main_pitch + self.pinion_pitch

    @cached_property
    def transverse_module(self) -> float:
        from math import cos

        gears = self.sheet.gears
        return gears.module * MM / cos(gears.helix_angle) if gears else 0.0

    @cached_property
    def main_pitch(self) -> float:
        return self.transverse_module * self.sheet.gears.main_teeth / 2 if self.sheet.gears else 0.0

    @cached_property
    def pinion_pitch(self) -> float:
        return self.transverse_module * self.sheet.gears.pinion_teeth / 2 if self.sheet.gears else 0.0

    @cached_property
    def module(self) -> float:
        return self.sheet.gears.module * MM if self.sheet.gears else 0.0

    @cached_property
    def drive_radius(self) -> float:
        bores = [w.inner_diameter * MM / 2 for w in self.stack if w.turns_with == "shaft"]
        return min(bores) if bores and not self.stack_on_spool else DRIVE_RADIUS

    @cached_property
    def lower_radius(self) -> float:
        """The drive shaft's lower end, stepped down to the bore of its bearing."""
        lower = self.bearing_at("drive shaft", "lower")
        return min(self.drive_radius, lower.size.bore * MM / 2) if lower else self.drive_radius

    @cached_property
    def sleeve_radius(self) -> float:
        """Round the drive shaft in the boss lies a sleeve, as thick as the outer bearing's bore asks."""
        handle = self.bearing_at("handle")
        return max(self.drive_radius, handle.size.bore * MM / 2) if handle else self.drive_radius

    @cached_property
    def stack_places(self) -> tuple[tuple[Washer, float, float], ...]:
        """Each member of the stack in place, from the inner end outwards: left and right face."""
        start = self.plate_out + END_ROOM
        places = []
        for washer in self.stack:
            places.append((washer, start, start + washer.thickness * MM))
            start += washer.thickness * MM
        return tuple(places)

    @cached_property
    def stack_end(self) -> float:
        return self.stack_places[-1][2] if self.stack_places else self.plate_out + END_ROOM

    @cached_property
    def gear_faces(self) -> tuple[float, float]:
        """Left and right face of the main gear's rim."""
        width = self.sheet.gears.face_width * MM if self.sheet.gears else 0.0
        inner = next((left for w, left, _ in self.stack_places if is_main_gear(w)), self.plate_out + END_ROOM)
        return inner, inner + width

    @cached_property
    def pinion_faces(self) -> tuple[float, float]:
        left, right = self.gear_faces
        ends = [x - b.size.width * MM / 2 for b, x in self.spool_bearings if x > right]
        return left - 0.8, min([right + 0.8, *(end - 0.2 for end in ends)])

    @cached_property
    def has_cover(self) -> bool:
        return self.sheet.gears is not None and not self.crossed_axes

    @cached_property
    def cover_in(self) -> float:
        """Inner face of the gear-side cover."""
        on_drive = 0.0 if self.stack_on_spool else self.stack_end
        return max(on_drive, self.gear_faces[1], self.shaft_ends[1] - 0.6) + END_ROOM

    @cached_property
    def cover_out(self) -> float:
        return self.cover_in + self.plate_wall

    @cached_property
    def boss_out(self) -> float:
        """Outer end of the boss that holds the drive shaft's outer bearing."""
        clutch = bool(self.sheet.anti_reverse and self.sheet.anti_reverse.roller_clutch)
        handle = self.bearing_at("handle")
        room = (CLUTCH_WIDTH if clutch else 0.0) + (handle.size.width * MM if handle else 0.0)
        return max(self.cover_out, self.cover_in + room + 0.6)

    @cached_property
    def springs_in(self) -> float:
        return self.boss_out + 0.8

    @cached_property
    def springs_out(self) -> float:
        if not self.sheet.drag or self.stack_on_spool:
            return self.springs_in
        return self.springs_in + spring_room(self.sheet)

    @cached_property
    def star_out(self) -> float:
        return self.springs_out + 0.4 + STAR_WIDTH

    @cached_property
    def arm_in(self) -> float:
        return self.star_out + 0.8

    @cached_property
    def arm_out(self) -> float:
        return self.arm_in + ARM_WIDTH

    @cached_property
    def right_end(self) -> float:
        """How far the section reaches to the gear side."""
        if self.sheet.handle and self.has_cover:
            return self.arm_out + 1.0 + KNOB_LENGTH
        return max(self.shaft_ends[1], self.plate_out) + (KNOB_LENGTH if self.sheet.handle else 4.0)

    # --- frame -----------------------------------------------------------------------------------

    @cached_property
    def worm_radius(self) -> float:
        return self.sheet.level_wind.worm_diameter * MM / 2 if self.sheet.level_wind else 0.0

    @cached_property
    def worm_axis(self) -> float:
        """The worm's axis, turned up into the plane of the section; y, so negative."""
        return -(self.rim + RIM_ROOM + 1.0 + self.worm_radius)

    @cached_property
    def plates(self) -> tuple[float, float] | None:
        """Inner faces of the plates that the sheet's spacing lies between; None where there are none."""
        return (-self.plate_in, self.plate_in) if self.sheet.frame else None

    @cached_property
    def lowest(self) -> float:
        """What is drawn lowest: sizes stand below it."""
        return self.cover_bottom if self.has_cover else self.bottom

    @cached_property
    def has_thumb_bar(self) -> bool:
        return self.sheet.reel.kind == "low-profile multiplier"

    @cached_property
    def bar_gap(self) -> float:
        """Between the spool's rim and a bar of the frame; a thumb bar lies in it."""
        return RIM_GAP + (THUMB_BAR if self.has_thumb_bar else 0.0)

    @cached_property
    def top(self) -> float:
        if self.sheet.level_wind:
            return self.worm_axis - self.worm_radius - 2.5
        return -(self.rim + RIM_ROOM + 2 * self.pillar_radius)

    @cached_property
    def cog_radii(self) -> tuple[tuple[float, float], ...]:
        """Driver and driven radius of each pair of cogs; their module is what makes them span the way up."""
        if not self.sheet.level_wind:
            return ()
        cogs = self.sheet.level_wind.cogs
        module = -2 * self.worm_axis / sum(a + b for a, b in cogs)
        return tuple((module * a / 2, module * b / 2) for a, b in cogs)

    @cached_property
    def cog_faces(self) -> tuple[float, float]:
        """The cogs stand on the end of the spool's shaft, outside its off-side bearing."""
        left = self.shaft_ends[0] + 0.6
        return left, left + COG_WIDTH

    @cached_property
    def pillar_radius(self) -> float:
        frame = self.sheet.frame
        return frame.pillar_diameter * MM / 2 if frame and frame.pillar_diameter else 2.0

    @cached_property
    def bottom(self) -> float:
        return self.rim + self.bar_gap - RIM_GAP + RIM_ROOM + 2 * self.pillar_radius

    @cached_property
    def cover_bottom(self) -> float:
        reach = self.drive_axis + self.main_pitch + self.module
        members = [self.drive_axis + w.outer_diameter * MM / 2 for w in self.stack if not self.stack_on_spool]
        return max([self.bottom, *(r + 1.2 + self.plate_wall for r in (reach, *members))])

    @cached_property
    def off_end(self) -> float:
        """Outer face of the off-side cover; negative."""
        return min(self.shaft_ends[0] - 0.6, -self.plate_out - 4.0) - self.plate_wall

    def bearing_at(self, *places: str) -> Bearing | None:
        """The bearing whose place has one of these words, the spool's own left out."""
        own = (b for b in self.sheet.bearings if not _words(b, "spool", "knob"))
        return next((b for b in own if _words(b, *places)), None)


def _words(bearing: Bearing, *words: str) -> bool:
    return any(word in bearing.place.casefold() for word in words)


def is_main_gear(washer: Washer) -> bool:
    return "main gear" in washer.name.casefold() or washer.name.casefold() == "gear"


def is_spool(washer: Washer) -> bool:
    return washer.name.casefold() in {"spool", "the spool"}


def spring_room(sheet: ReelSheet) -> float:
    """Length of the cupped springs, free, as they stand in their nests."""
    if not sheet.drag:
        return 0.0
    springs = sheet.drag.springs
    return sum((springs.cone_height + count * springs.thickness) * MM for count in springs.nests)


def measure(sheet: ReelSheet) -> Measures:
    """The stations of this reel's section, as its kind is laid out."""
    from spoolwright.papers.section.fixed_measures import FixedMeasures
    from spoolwright.papers.section.fly_measures import FlyMeasures
    from spoolwright.papers.section.lever_measures import LeverMeasures

    of_kind = {"lever drag": LeverMeasures, "fixed spool": FixedMeasures, "fly": FlyMeasures}
    return of_kind.get(sheet.reel.kind, Measures)(sheet)
