"""Where everything lies in the section of a fly reel: one plate, a fixed spindle, the drag inside the arbor.

The frame's back plate is at the left and the spool's open face with its knob at the right. The drag stack is
built up from the back plate into the hollow of the arbor.
"""

from __future__ import annotations

from functools import cached_property

from spoolwright.papers.section.measures import END_ROOM, KNOB_LENGTH, MM, Measures, spring_room
from spoolwright.sheets.sheet_tables import Bearing, Washer

KNOB_DEPTH, KNOB_RADIUS = 7.0, 12.0
CLUTCH_WALL, CLUTCH_LENGTH = 3.0, 8.0
HUB_WALL = 2.5
CAP_DEPTH = 3.0
FOOT_HEIGHT = 3.0


class FlyMeasures(Measures):
    """The stations of a fly reel, all in mm."""

    @cached_property
    def flange(self) -> float:
        return self.sheet.spool.flange * MM

    @cached_property
    def spool_end(self) -> float:
        return self.half_width + self.flange

    @cached_property
    def back_in(self) -> float:
        """Inner face of the back plate; negative."""
        frame = self.sheet.frame
        said = self.spool_end + END_ROOM - frame.plate_spacing * MM if frame else 0.0
        return min(said, -self.spool_end - END_ROOM)

    @cached_property
    def plates(self) -> tuple[float, float] | None:
        """A fly reel has one plate: its spacing is the room for the spool."""
        return (self.back_in, self.spool_end + END_ROOM) if self.sheet.frame else None

    @cached_property
    def lowest(self) -> float:
        return self.bottom + FOOT_HEIGHT if self.sheet.frame else self.bottom

    @cached_property
    def back_out(self) -> float:
        return self.back_in - self.plate_wall

    @cached_property
    def frame_radius(self) -> float:
        frame = self.sheet.frame
        said = frame.plate_diameter * MM / 2 if frame and frame.plate_diameter else 0.0
        return max(said, self.rim + 1.0)

    @cached_property
    def stack_places(self) -> tuple[tuple[Washer, float, float], ...]:
        """From the back plate into the arbor."""
        start, places = self.back_in, []
        for washer in self.stack:
            places.append((washer, start, start + washer.thickness * MM))
            start += washer.thickness * MM
        return tuple(places)

    @cached_property
    def stack_end(self) -> float:
        return self.stack_places[-1][2] if self.stack_places else self.back_in

    @cached_property
    def springs_in(self) -> float:
        return self.stack_end + 0.3

    @cached_property
    def inner_end(self) -> float:
        """Where the drag ends inside the arbor, its springs among it."""
        return self.springs_in + spring_room(self.sheet) if self.stack_places else self.back_in

    @cached_property
    def hub_in(self) -> float:
        """Where the spool's hub begins: clear of the drag."""
        return max(-self.half_width + 1.0, self.inner_end + END_ROOM)

    @cached_property
    def clutch(self) -> tuple[float, float] | None:
        """Left and right end of the one-way clutch in the hub, where the sheet has one."""
        if not (self.sheet.anti_reverse and self.sheet.anti_reverse.roller_clutch):
            return None
        said = self.sheet.anti_reverse.roller_length
        end = self.hub_in + (said * MM if said else CLUTCH_LENGTH)
        return self.hub_in + 0.3, min(end, self.spool_end - 5.0)

    @cached_property
    def clutch_radius(self) -> float:
        """Radius of the clutch's sleeve."""
        held = self.sheet.anti_reverse
        if held and held.sleeve_diameter:
            return max(held.sleeve_diameter * MM / 2, self.shaft_radius + 0.6)
        return self.shaft_radius + 2.0

    @cached_property
    def hub(self) -> float:
        """Outer radius of the spool's hub."""
        bearings = [b.size.outer * MM / 2 for b, _ in self.spool_bearings]
        clutch = [self.clutch_radius + CLUTCH_WALL] if self.clutch else []
        return min(max([self.shaft_radius, *bearings, *clutch]) + HUB_WALL, self.arbor - 1.0)

    @cached_property
    def spool_bearings(self) -> tuple[tuple[Bearing, float], ...]:
        """The rear one towards the frame, the front one under the cap; both in the hub."""
        own = [b for b in self.sheet.bearings if "spool" in b.place.casefold()]
        if not own:
            return ()
        front = self.spool_end - own[0].size.width * MM / 2 - 0.4
        if len(own) == 1:
            return ((own[0], front),)
        rear = next((b for b in own if any(w in b.place.casefold() for w in ("rear", "off"))), own[1])
        start = (self.clutch[1] if self.clutch else self.hub_in) + 0.4
        middle = start + rear.size.width * MM / 2
        fore = next(b for b in own if b is not rear)
        return (rear, min(middle, front - 3.0)), (fore, front)

    @cached_property
    def shaft_ends(self) -> tuple[float, float]:
        return self.back_out, self.spool_end + 1.0

    @cached_property
    def right_end(self) -> float:
        knob = KNOB_LENGTH if self.sheet.handle else 0.0
        return self.spool_end + max(knob, CAP_DEPTH)

    @cached_property
    def off_end(self) -> float:
        return self.back_out - (KNOB_DEPTH if self.sheet.drag else 0.0)

    @cached_property
    def top(self) -> float:
        return -self.frame_radius

    @cached_property
    def bottom(self) -> float:
        return self.rim + self.bar_gap + 2 * self.pillar_radius

    @cached_property
    def bar_gap(self) -> float:
        """Between the spool's rim and a bar of the frame."""
        return 1.2 + (PALM_WALL if self.sheet.spool.palming_rim else 0.0)


PALM_WALL = 1.6
