"""The tables of a reel sheet, one class each; the names are those of the TOML file."""

from __future__ import annotations

from itertools import groupby
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field

from spoolwright.sheets.fields import (
    Angle,
    BearingSize,
    Friction,
    Inertia,
    Length,
    LengthOrZero,
    Lubricant,
    MagnetDrag,
    Mass,
    Material,
    Modulus,
    Note,
    Pull,
    Slug,
    Stiffness,
    Torque,
    Turns,
    WasherMaterial,
    Words,
)

Kind = Literal["round multiplier", "low-profile multiplier", "lever drag", "fixed spool", "fly"]
LubricantClass = Literal["O1", "O2", "O3", "G1", "G2", "G3", "AS", "OC", "DRY", "TL"]


def _whole(low: int, high: int) -> Any:
    return Field(strict=True, ge=low, le=high, description=f"a whole number from {low} to {high}")


Teeth = Annotated[int, _whole(6, 200)]
Count = Annotated[int, _whole(0, 400)]
_ARRANGEMENT = 'brackets only: "()" back to back, "))" nested, "(())" two nests of two'
_ORDER = 'a number and at most one letter as text, such as "4" or "4a"'
_SCREW = r"^[A-Za-z0-9][A-Za-z0-9 .x×/#-]{0,19}$"
_COGS = "1 to 6 pairs of teeth from 6 to 200, such as [[18, 24], [24, 34]]"
YesNo = Annotated[bool, Field(strict=True, description="true or false, without quotes")]


class Table(BaseModel):
    """Frozen, and a key that is not known is refused rather than forgotten."""

    # Built when the first sheet is read: a verb that reads none should not wait for it.
    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False, defer_build=True)


class Reel(Table):
    maker: Words
    model: Words
    slug: Slug
    kind: Kind
    winding_hand: Literal["right", "left", "either"]
    generation: Words | None = None
    mass: Mass | None = None
    source: Note | None = None
    note: Note | None = None


class Spool(Table):
    arbor_diameter: Length
    flange_diameter: Length
    width: Length
    line_level: LengthOrZero
    mass: Mass | None = None
    material: Material | None = None
    inertia: Inertia | None = None
    wall: Length | None = None
    flange_thickness: Length | None = None
    rear_flange_diameter: Length | None = None
    skirt_length: Length | None = None
    palming_rim: Length | None = None

    @property
    def flange(self) -> float:
        """Thickness of a flange [m]: as stated, else the wall's, else 1.5 mm."""
        return self.flange_thickness or self.wall or 1.5e-3

    @property
    def arbor_radius(self) -> float:
        return self.arbor_diameter / 2

    @property
    def full_radius(self) -> float:
        """Radius of the top of the line at a full spool [m]: the lip less the line level."""
        return self.flange_diameter / 2 - self.line_level


class Gears(Table):
    main_teeth: Teeth
    pinion_teeth: Teeth
    module: Length
    face_width: Length
    main_material: Material
    pinion_material: Material
    helix_angle: Angle = 0.0
    low_main_teeth: Teeth | None = None
    low_pinion_teeth: Teeth | None = None
    form: Literal["side by side", "face", "worm", "bevel"] = "side by side"
    pressure_angle: Angle = 0.3490658503988659
    pinion_bore: Length | None = None
    axis_offset: LengthOrZero | None = None

    @property
    def low_ratio(self) -> float | None:
        """Turns of the spool for one turn of the handle in the low gear, where there is one."""
        if self.low_main_teeth is None or self.low_pinion_teeth is None:
            return None
        return self.low_main_teeth / self.low_pinion_teeth

    @property
    def ratio(self) -> float:
        """Turns of the spool for one turn of the handle, in the high gear."""
        return self.main_teeth / self.pinion_teeth


class Washer(Table):
    """One member of the drag stack, the main gear or the spool itself among them."""

    name: Words
    outer_diameter: Length
    inner_diameter: Length
    thickness: Length
    material: WasherMaterial
    turns_with: Literal["gear", "shaft", "spool", "neither"]
    lubrication: Literal["dry", "greased"]


class Springs(Table):
    """Cupped spring washers of one size; "()" stands back to back, "))" nested."""

    outer_diameter: Length
    inner_diameter: Length
    thickness: Length
    cone_height: Length
    arrangement: Annotated[str, Field(pattern=r"^[()]{1,24}$", description=_ARRANGEMENT)]
    youngs_modulus: Modulus = 206e9

    @property
    def nests(self) -> tuple[int, ...]:
        """Springs in each nest, in order: "(())" is (2, 2), two nests in series of two in parallel."""
        return tuple(len(list(run)) for _, run in groupby(self.arrangement))


class Thread(Table):
    pitch: Length
    pitch_diameter: Length
    friction: Friction
    bearing_radius: LengthOrZero
    bearing_friction: Friction
    flank_angle: Angle = 0.5235987755982988


class Lever(Table):
    """The cam of a lever drag: how far it moves the plates over the lever's way."""

    arm_length: Length
    cam_rise: Length
    cam_angle: Angle
    strike_angle: Angle | None = None
    running_gap: LengthOrZero | None = None
    preset_turns: Turns | None = None
    return_spring: Stiffness | None = None


class Drag(Table):
    acts_on: Literal["main gear", "spool"]
    control: Literal["star", "lever", "knob"]
    hand_torque: Torque
    turns_to_full: Turns
    stack: tuple[Washer, ...] = Field(
        min_length=2, max_length=40, description="2 to 40 members, each a table [[drag.stack]]"
    )
    springs: Springs
    thread: Thread
    room: Length | None = None
    lever: Lever | None = None


class Bearing(Table):
    place: Words
    size: BearingSize
    kind: Literal["stainless", "chrome steel", "hybrid"]
    shields: Literal["open", "shielded", "sealed"]
    lubricant: Lubricant
    balls: Annotated[int, _whole(3, 40)] | None = None


class ShaftStep(Table):
    """One cylinder of a stepped shaft; the steps lie end to end from the gear side to the off side."""

    length: Length
    diameter: Length


class Shaft(Table):
    """The spool's shaft. `overhang` is from the nearest bearing to the middle of a spool borne at one end."""

    diameter: Length
    span: Length
    material: Material
    borne: Literal["both ends", "one end", "fixed, spool on its bearings"]
    steps: tuple[ShaftStep, ...] = Field(
        default=(), max_length=20, description="at most 20 cylinders, each a table [[shaft.steps]]"
    )
    overhang: Length | None = None


class Handle(Table):
    arm_length: Length
    knobs: Annotated[int, _whole(1, 2)]
    material: Material | None = None
    section_width: Length | None = None
    section_thickness: Length | None = None
    shaft_diameter: Length | None = None


class LevelWind(Table):
    kind: Literal["always driven", "disengages in the cast", "follows the line"]
    cogs: tuple[tuple[Teeth, Teeth], ...] = Field(min_length=1, max_length=6, description=_COGS)
    worm_lead: Length
    travel: Length
    worm_diameter: Length
    pawl_material: Material
    worm_material: Material
    pawl_thickness: Length | None = None
    pawl_width: Length | None = None
    groove_depth: Length | None = None


class AntiReverse(Table):
    roller_clutch: YesNo
    ratchet_teeth: Annotated[int, _whole(2, 120)] | None = None
    dogs: Annotated[int, _whole(1, 4)] | None = None
    ratchet_diameter: Length | None = None
    ratchet_material: Material | None = None
    tooth_height: Length | None = None
    tooth_root: Length | None = None
    tooth_width: Length | None = None
    sleeve_diameter: Length | None = None
    roller_length: Length | None = None


class Brakes(Table):
    blocks: Count | None = None
    block_mass: Mass | None = None
    block_radius: Length | None = None
    ring_friction: Friction | None = None
    magnets: Count | None = None
    magnet_drag: MagnetDrag | None = None
    note: Note | None = None


class Frame(Table):
    construction: Words
    material: Material
    plate_thickness: Length
    plate_spacing: Length
    pillars: Count | None = None
    pillar_diameter: Length | None = None
    pillar_circle: Length | None = None
    plate_diameter: Length | None = None
    foot_height: Length | None = None
    foot_screw_spacing: Length | None = None


class Rotor(Table):
    """What turns round the spool of a fixed-spool reel and lays the line on it."""

    diameter: Length
    length: Length
    material: Material
    mass: Mass | None = None
    inertia: Inertia | None = None
    bail_wire_diameter: Length | None = None
    roller_diameter: Length
    roller_width: Length


class Oscillation(Table):
    """What moves the spool of a fixed-spool reel to and fro. `cogs` lead from the pinion to it."""

    kind: Literal["worm", "crank", "eccentric"]
    stroke: Length
    cogs: tuple[tuple[Teeth, Teeth], ...] = Field(min_length=1, max_length=6, description=_COGS)
    worm_lead: Length | None = None
    worm_diameter: Length | None = None
    pawl_material: Material | None = None
    worm_material: Material | None = None


class Check(Table):
    """The click of a fly reel: pawls pressed on a wheel of the spool."""

    wheel_teeth: Teeth
    pawls: Annotated[int, _whole(1, 4)]
    springs: Annotated[int, _whole(1, 8)]
    pull: Pull
    pawl_material: Material | None = None


class Screw(Table):
    place: Words
    thread: Annotated[str, Field(pattern=_SCREW, description='a thread, such as "M3" or "M10 x 0.75"')]
    length: Length
    count: Annotated[int, _whole(1, 40)]
    material: Material


class Part(Table):
    """One line of the parts list, in the order of coming off; 0 is before everything."""

    order: Annotated[str, Field(pattern=r"^[0-9]{1,3}[a-z]?$", description=_ORDER)]
    name: Words
    quantity: Annotated[int, _whole(1, 60)]
    material: Words
    lubricant: LubricantClass
    amount: Words | None = None
    reject: Words | None = None
    cell: Annotated[int, _whole(1, 60)] | None = None

    @property
    def turn(self) -> tuple[int, str]:
        """Sort key of the removal order: "4b" comes after "4a" and before "5"."""
        digits = self.order.rstrip("abcdefghijklmnopqrstuvwxyz")
        return int(digits), self.order[len(digits) :]
