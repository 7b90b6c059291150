"""Where everything lies in the section of a fixed-spool reel: along its main shaft, seen from above.

The lip is at the left, the body at the right; the section holds the main shaft and the main gear's axis, the
gear's offset opened out. The drag lies in a well of the spool, the rotor turns round its skirt.
"""

from __future__ import annotations

from functools import cached_property

from spoolwright.papers.section.measures import KNOB_LENGTH, MM, Measures, spring_room
from spoolwright.sheets.sheet_tables import Bearing, Washer

CAP_DEPTH, CAP_WALL = 4.0, 2.0
SKIRT = 9.0
CLUTCH_WALL = 3.5
ROTOR_WALL, WEB = 2.2, 2.5
NUT_DEPTH, NUT_RADIUS = 3.0, 6.0
BLANK = 3.0
"""Thickness of the main gear behind its teeth."""
COLLAR_ROOM = 1.0
CLEAR = 4.0


class FixedMeasures(Measures):
    """The stations of a fixed-spool reel, all in mm; x grows from the lip to the body."""

    # --- spool -----------------------------------------------------------------------------------------

    @cached_property
    def flange(self) -> float:
        return self.sheet.spool.flange * MM

    @cached_property
    def spool_end(self) -> float:
        return self.half_width + self.flange

    @cached_property
    def rear(self) -> float:
        """Radius of the rear flange and of the skirt."""
        said = self.sheet.spool.rear_flange_diameter
        return max(said * MM / 2 if said else self.rim + 1.0, self.arbor + 2.0)

    @cached_property
    def skirt_end(self) -> float:
        said = self.sheet.spool.skirt_length
        return self.spool_end + (said * MM if said else SKIRT)

    @cached_property
    def skirt_wall(self) -> float:
        return min(self.wall, 1.5)

    @cached_property
    def floor_washer(self) -> Washer | None:
        """The floor of the well, where the stack begins with a member that is the spool's own."""
        first = self.stack[0] if self.stack else None
        return first if first is not None and first.turns_with == "spool" else None

    @cached_property
    def well(self) -> float:
        """Radius of the well in which the drag lies."""
        members = [w.outer_diameter * MM / 2 for w in self.stack]
        return min(max([self.shaft_radius + 4.0, *members]) + 0.3, self.arbor - 0.6)

    @cached_property
    def floor_faces(self) -> tuple[float, float]:
        """Front and back of the well's floor."""
        loose = [w.thickness * MM for w in self.stack if w is not self.floor_washer]
        front = min(-self.spool_end + 1.0 + sum(loose), self.half_width - 3.0)
        thick = self.floor_washer.thickness * MM if self.floor_washer else 2.0
        return front, front + thick

    @cached_property
    def stack_places(self) -> tuple[tuple[Washer, float, float], ...]:
        """From the floor outwards to the knob, which is to the left."""
        places, edge = [], self.floor_faces[0]
        for washer in self.stack:
            if washer is self.floor_washer:
                places.append((washer, *self.floor_faces))
                continue
            places.append((washer, edge - washer.thickness * MM, edge))
            edge -= washer.thickness * MM
        return tuple(places)

    @cached_property
    def stack_end(self) -> float:
        """Front face of the outermost member."""
        return min([self.floor_faces[0], *(left for _, left, _ in self.stack_places)])

    @cached_property
    def springs_in(self) -> float:
        return self.stack_end - spring_room(self.sheet)

    @cached_property
    def knob_out(self) -> float:
        front = self.springs_in if self.sheet.drag else -self.spool_end
        return min(front - CAP_DEPTH, -self.spool_end - CAP_DEPTH)

    @cached_property
    def hub_end(self) -> float:
        return self.spool_end - 1.0

    @cached_property
    def stroke(self) -> float:
        said = self.sheet.oscillation
        return said.stroke * MM if said else 2 * self.half_width

    # --- rotor -----------------------------------------------------------------------------------------

    @cached_property
    def web_in(self) -> float:
        """Front of the rotor's web, clear of the spool at the rear end of its stroke."""
        return self.hub_end + self.stroke / 2 + NUT_DEPTH + 0.6

    @cached_property
    def web_out(self) -> float:
        return self.web_in + WEB

    @cached_property
    def cup(self) -> float:
        """Outer radius of the rotor's cup inside the skirt."""
        return max(self.rear - self.skirt_wall - 1.0, self.clutch_radius + CLUTCH_WALL + 4.0)

    @cached_property
    def rotor_radius(self) -> float:
        said = self.sheet.rotor
        return max(said.diameter * MM / 2 if said else 0.0, self.rear + 5.0)

    @cached_property
    def rotor_end(self) -> float:
        return max(self.skirt_end + self.stroke / 2 + 1.0, self.web_out + 8.0) + ROTOR_WALL

    @cached_property
    def arm_tip(self) -> float:
        said = self.sheet.rotor
        return self.rotor_end - said.length * MM if said else -2.0

    # --- pinion, clutch, body --------------------------------------------------------------------------

    @cached_property
    def clutch_radius(self) -> float:
        """Radius of the clutch's sleeve on the pinion."""
        held = self.sheet.anti_reverse
        said = held.sleeve_diameter * MM / 2 if held and held.sleeve_diameter else 0.0
        return max(said, self.pinion_pitch + 1.0)

    @cached_property
    def clutch(self) -> tuple[float, float]:
        held = self.sheet.anti_reverse
        said = held.roller_length * MM if held and held.roller_length else 6.0
        return self.web_out + 1.5, self.web_out + 1.5 + said + 1.0

    @cached_property
    def front_bearing(self) -> tuple[Bearing, float] | None:
        """The pinion's front bearing and its middle."""
        found = self.bearing_at("pinion")
        return (found, self.clutch[1] + 0.5 + found.size.width * MM / 2) if found else None

    @cached_property
    def collar(self) -> float:
        """Outer radius of the body's collar in the rotor's cup."""
        bearing = self.front_bearing[0].size.outer * MM / 2 if self.front_bearing else 0.0
        return min(max(self.clutch_radius + CLUTCH_WALL, bearing) + 2.2, self.cup - ROTOR_WALL - 0.8)

    @cached_property
    def body_in(self) -> float:
        """Front of the body, behind the rotor."""
        return self.rotor_end + COLLAR_ROOM

    @cached_property
    def pinion_faces(self) -> tuple[float, float]:
        """The teeth of the pinion, behind its bearing and inside the body."""
        bearing = (
            self.front_bearing[1] + self.front_bearing[0].size.width * MM / 2 if self.front_bearing else 0.0
        )
        start = max(bearing + 0.6, self.body_in + self.plate_wall + 0.5)
        width = self.sheet.gears.face_width * MM * 1.8 if self.sheet.gears else 8.0
        return start, start + width

    @cached_property
    def gear_centre(self) -> float:
        """Where the main gear's axis crosses the section."""
        return sum(self.pinion_faces) / 2 + self.main_pitch

    @cached_property
    def gear_levels(self) -> tuple[float, float]:
        """Tips of the main gear's teeth, which face the pinion, and the back of its blank; y."""
        tips = self.pinion_pitch - self.module
        return tips, tips + 2.25 * self.module + BLANK

    @cached_property
    def drive_radius(self) -> float:
        handle = self.sheet.handle
        return handle.shaft_diameter * MM / 2 if handle and handle.shaft_diameter else 3.5

    @cached_property
    def body_half(self) -> float:
        """Half of the body's inner width."""
        frame = self.sheet.frame
        said = frame.plate_spacing * MM / 2 if frame else 0.0
        return max(said, self.gear_levels[1] + 1.5, self.collar - self.plate_wall)

    @cached_property
    def plates(self) -> tuple[float, float] | None:
        return None

    @cached_property
    def body_out(self) -> float:
        gear = (
            self.gear_centre
            + self.main_pitch
            + (self.sheet.gears.face_width * MM / 2 if self.sheet.gears else 0)
        )
        return max(gear, self.shaft_ends[1] + self.stroke / 2) + 2.0 + self.plate_wall

    @cached_property
    def body_side(self) -> float:
        return self.body_half + self.plate_wall

    @cached_property
    def shaft_ends(self) -> tuple[float, float]:
        front = self.knob_out + CAP_WALL
        steps = self.sheet.shaft.steps if self.sheet.shaft else ()
        length = sum(step.length for step in steps) * MM
        return front, front + length if length else self.gear_centre

    # --- handle and outlines ---------------------------------------------------------------------------

    @cached_property
    def arm_level(self) -> float:
        """Where the handle's arm lies beside the body, clear of the rotor; y."""
        return max(self.rotor_radius, self.body_side) + CLEAR

    @cached_property
    def arm_thick(self) -> float:
        handle = self.sheet.handle
        return handle.section_thickness * MM if handle and handle.section_thickness else 3.0

    @cached_property
    def right_end(self) -> float:
        return self.body_out + 1.0

    @cached_property
    def off_end(self) -> float:
        return self.knob_out

    @cached_property
    def top(self) -> float:
        return -max(self.rotor_radius, self.body_side)

    @cached_property
    def bottom(self) -> float:
        handle = self.arm_level + self.arm_thick + KNOB_LENGTH if self.sheet.handle else 0.0
        return max(self.rotor_radius, self.body_side, handle)
