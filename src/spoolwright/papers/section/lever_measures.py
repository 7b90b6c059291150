"""Where everything lies in the section of a lever drag: plate and disc beside the spool, two gears, a cam.

The drag acts on the spool itself, so its discs lie between the spool's flange and the gear-side plate; the
pull rod passes through the pinion to springs, cam and preset outside the cover.
"""

from __future__ import annotations

from functools import cached_property

from spoolwright.papers.section.measures import ARM_WIDTH, END_ROOM, KNOB_LENGTH, MM, Measures, spring_room
from spoolwright.sheets.sheet_tables import Bearing, Washer

CAM_WIDTH, THRUST_WIDTH = 3.0, 2.5
PRESET_LENGTH, PRESET_RADIUS = 8.0, 10.0
DRIVE_RADIUS = 5.0
FOOT_HEIGHT = 3.0


class LeverMeasures(Measures):
    """The stations of a lever drag, all in mm."""

    @cached_property
    def spool_bearings(self) -> tuple[tuple[Bearing, float], ...]:
        """The spool's bearings sit in the ends of its hub, whatever the span of the rod."""
        own = [b for b in self.sheet.bearings if "spool" in b.place.casefold()]
        places = [self.spool_end - b.size.width * MM / 2 for b in own[:2]]
        if len(own) < 2:
            return tuple(zip(own, places, strict=True))
        off = next((b for b in own if "off" in b.place.casefold() or "left" in b.place.casefold()), own[1])
        gear = next(b for b in own if b is not off)
        return (off, -places[0]), (gear, places[1])

    @cached_property
    def stack_places(self) -> tuple[tuple[Washer, float, float], ...]:
        """From the spool's flange outwards to the plate that the pinion drives."""
        start, places = self.spool_end, []
        for washer in self.stack:
            places.append((washer, start, start + washer.thickness * MM))
            start += washer.thickness * MM
        return tuple(places)

    @cached_property
    def stack_end(self) -> float:
        return self.stack_places[-1][2] if self.stack_places else self.spool_end

    @cached_property
    def plate_in(self) -> float:
        """Inner face of the gear-side plate."""
        return self.stack_end + END_ROOM

    @cached_property
    def off_in(self) -> float:
        """Inner face of the off-side plate; negative."""
        frame = self.sheet.frame
        said = self.plate_in - frame.plate_spacing * MM if frame else 0.0
        return min(said, -self.spool_end - END_ROOM)

    @cached_property
    def plates(self) -> tuple[float, float] | None:
        return (self.off_in, self.plate_in) if self.sheet.frame else None

    @cached_property
    def lowest(self) -> float:
        return max(self.cover_bottom, self.rim + self.bar_gap + 2 * self.pillar_radius + FOOT_HEIGHT)

    @cached_property
    def off_out(self) -> float:
        return self.off_in - self.plate_wall

    @cached_property
    def plate_radius(self) -> float:
        frame = self.sheet.frame
        said = frame.plate_diameter * MM / 2 if frame and frame.plate_diameter else 0.0
        return max(said, self.rim + 2.0 + 2 * self.pillar_radius)

    # --- gears ---------------------------------------------------------------------------------------

    @cached_property
    def drive_radius(self) -> float:
        handle = self.sheet.handle
        return handle.shaft_diameter * MM / 2 if handle and handle.shaft_diameter else DRIVE_RADIUS

    @cached_property
    def gear_faces(self) -> tuple[float, float]:
        """Left and right face of the pair that is nearer to the spool: the high gear."""
        width = self.sheet.gears.face_width * MM if self.sheet.gears else 0.0
        start = self.plate_out + self.bearing_step + END_ROOM
        return start, start + width

    @cached_property
    def bearing_step(self) -> float:
        """By how much the pinion's bearing stands out of the plate."""
        own = self.bearing_at("pinion")
        return max(0.0, own.size.width * MM - self.plate_wall) if own else 0.0

    @cached_property
    def low_faces(self) -> tuple[float, float] | None:
        gears = self.sheet.gears
        if gears is None or gears.low_ratio is None:
            return None
        start = self.gear_faces[1] + END_ROOM
        return start, start + gears.face_width * MM

    @cached_property
    def low_pitches(self) -> tuple[float, float]:
        """Pitch radii of main gear and pinion of the low pair."""
        gears = self.sheet.gears
        if gears is None or gears.low_main_teeth is None or gears.low_pinion_teeth is None:
            return 0.0, 0.0
        return tuple(  # type: ignore[return-value]
            self.transverse_module * teeth / 2 for teeth in (gears.low_main_teeth, gears.low_pinion_teeth)
        )

    @cached_property
    def cover_in(self) -> float:
        return (self.low_faces or self.gear_faces)[1] + END_ROOM

    @cached_property
    def boss_out(self) -> float:
        return max(self.arm_in - 1.0, self.cover_out)

    # --- cam, springs, preset on the rod -------------------------------------------------------------

    @cached_property
    def cam_out(self) -> float:
        return self.cover_out + 2 * CAM_WIDTH

    @cached_property
    def springs_in(self) -> float:
        return self.cam_out + THRUST_WIDTH

    @cached_property
    def springs_out(self) -> float:
        return self.springs_in + spring_room(self.sheet)

    @cached_property
    def preset_out(self) -> float:
        return self.springs_out + PRESET_LENGTH

    @cached_property
    def arm_in(self) -> float:
        return self.preset_out + 1.5

    @cached_property
    def arm_out(self) -> float:
        handle = self.sheet.handle
        thick = handle.section_thickness * MM if handle and handle.section_thickness else ARM_WIDTH
        return self.arm_in + thick

    @cached_property
    def shaft_ends(self) -> tuple[float, float]:
        return self.off_out + 0.6, self.preset_out + 0.8

    # --- outlines --------------------------------------------------------------------------------------

    @cached_property
    def right_end(self) -> float:
        return self.arm_out + 1.0 + KNOB_LENGTH if self.sheet.handle else self.preset_out + 3.0

    @cached_property
    def off_end(self) -> float:
        return self.off_out

    @cached_property
    def top(self) -> float:
        return -self.plate_radius

    @cached_property
    def bottom(self) -> float:
        return self.plate_radius

    @cached_property
    def cover_bottom(self) -> float:
        reach = max(self.main_pitch, self.low_pitches[0]) + self.module
        return max(self.bottom, self.drive_axis + reach + 1.2 + self.plate_wall)
