"""At which pull do the anti-reverse, the drive shaft, the star's thread and the handle give?"""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.judgement import drag_train
from spoolwright.judgement.loads import (
    RECTANGLE_PLASTIC,
    SHEAR_YIELD,
    Loads,
    material_words,
    part_material,
)
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.rung import Limit
from spoolwright.mechanics import anti_reverse, handle, threads
from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sheet_tables import AntiReverse

FEWEST_ROLLERS, MOST_ROLLERS = 6, 8
ROLLER = (1.5e-3, 2.0e-3)
ROLLER_LENGTH = (5e-3, 8e-3)
"""Rollers of a clutch, their diameter and, where the sheet does not say it, length [m]: judgement priors."""

ROLLER_PRESSURE = (2.5e9, 4.0e9)
"""Peak pressure that hard rollers and sleeve bear [Pa], as mechanics.anti_reverse says."""

BEARS_AT = 0.7
"""Where on its height a ratchet tooth is pushed: judgement prior."""

TORSION_PLASTIC = 4 / 3
"""How much more than at first yield a round shaft in torsion carries before all of it yields."""

ON_THE_ROTOR = ("fixed spool", "fly")
"""Kinds whose anti-reverse holds what the line pulls at once, not through the gears."""


def drive_rungs(loads: Loads) -> list[Limit]:
    """Limits of everything between the main gear and the hand.

    Parameters
    ----------
    loads : Loads
        The reel, where the line leaves **[m]**, and draws.

    Returns
    -------
    list of Limit
        Pulls at the line **[N]**, shape `(n,)`: anti-reverse, drive shaft, star thread, handle, as far as
        the reel has them.

    Notes
    -----
    Torque about the drive shaft = pull r ratio, nothing lost. Dog: a ratchet tooth yields at its root in
    shear or through in bending, whichever comes first, one dog or all of them in touch. Roller clutch: its
    rollers mark the sleeve. Where both are there, the stronger holds. Drive shaft: yields through in
    torsion, at 4/3 of first yield, less what flats take off. Thread of star or knob: strips; the clamp that
    goes with a pull comes from the drag. Handle: only while one winds against the pull; its arm yields
    through at the boss. On fixed-spool and fly reels the anti-reverse feels the pull without the gears.
    Left out: keys, pins and bearings of the drive shaft, ears of the discs.

    Source
    ------
    mechanics.anti_reverse, mechanics.handle, mechanics.threads; sizes that the sheet does not state are
    judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.load_ladder import load_ladder
    >>> from spoolwright.sheets import reel_sheet
    >>> rungs = load_ladder(reel_sheet.load("tarvak-52"), samples=500).rungs
    >>> sorted(one.part for one in rungs if one.part in ("anti-reverse", "drive shaft", "handle"))
    ['anti-reverse', 'drive shaft', 'handle']
    """
    found = [_anti_reverse(loads), _drive_shaft(loads), _star_thread(loads), _handle(loads)]
    return [limit for limit in found if limit is not None]


def _stop_torque(loads: Loads) -> float:
    """Torque on the anti-reverse for each newton at the line [N m/N]."""
    return loads.radius if loads.sheet.reel.kind in ON_THE_ROTOR else loads.handle_torque


def _anti_reverse(loads: Loads) -> Limit | None:
    held = loads.sheet.anti_reverse
    if held is None:
        return None
    dog = _dog_torque(loads, held) if held.ratchet_teeth and held.dogs else None
    clutch = _clutch_torque(loads, held) if held.roller_clutch else None
    if dog is None and clutch is None:
        return None
    if dog is None or (clutch is not None and np.median(clutch) > np.median(dog)):
        assert clutch is not None
        return Limit(
            "anti-reverse",
            "anti-reverse (roller clutch)",
            "the rollers slip or mark their sleeve, and the handle runs backwards",
            clutch / _stop_torque(loads),
            "6 to 8 rollers pressed on their sleeve until they mark it (Hertz; clutch books, from memory)",
            "rollers, and 2.5 to 4 GPa that hard steel bears: judgement prior",
        )
    metal = _ratchet_material(loads, held)
    behind = "; the roller clutch gives before and leaves it to the dog" if clutch is not None else ""
    return Limit(
        "anti-reverse",
        "anti-reverse (dog and ratchet)",
        f"a ratchet tooth breaks away under the dog{behind}",
        dog / _stop_torque(loads),
        "a tooth sheared or bent off at its root",
        f"{material_words(metal, structural_material(metal).yield_strength)}; {_ratchet_mark(held)}",
    )


def _ratchet_mark(held: AntiReverse) -> str:
    stated = held.ratchet_diameter and held.tooth_height and held.tooth_root and held.tooth_width
    return "sizes of the teeth from the sheet" if stated else "sizes of the teeth in part a judgement prior"


def _ratchet_material(loads: Loads, held: AntiReverse) -> str:
    return held.ratchet_material or part_material(loads.sheet, "ratchet", "carbon steel")


def _dog_torque(loads: Loads, held: AntiReverse) -> Sample:
    assert held.ratchet_teeth is not None
    assert held.dogs is not None
    washer = next(
        (one for one in (loads.sheet.drag.stack if loads.sheet.drag else ()) if "ratchet" in one.name), None
    )
    gear = loads.sheet.gears
    guess = gear.module * gear.main_teeth if gear else loads.sheet.spool.arbor_diameter
    stated = held.ratchet_diameter or (washer.outer_diameter if washer else None)
    radius = loads.stated_or_guessed("ratchet", stated, 0.5 * guess, 0.75 * guess) / 2
    wide = held.tooth_width or (washer.thickness if washer else None)
    width = loads.stated_or_guessed("ratchet tooth width", wide, 1.2e-3, 2.0e-3)
    pitch = 2 * pi * radius / held.ratchet_teeth
    root = (
        held.tooth_root * loads.size("ratchet tooth root")
        if held.tooth_root
        else np.minimum(pitch * loads.between("ratchet tooth root: guess", 0.4, 0.6), 4e-3)
    )
    height = loads.stated_or_guessed("ratchet tooth height", held.tooth_height, 1.0e-3, 1.6e-3)
    yields = loads.yields_at("ratchet", _ratchet_material(loads, held))
    at_once = loads.between("dogs in touch", 1.0, float(held.dogs))
    each = anti_reverse.ratchet_stress(1.0, radius - height / 2, BEARS_AT * height, root, width, at_once)
    return np.minimum(SHEAR_YIELD * yields / each["shear"], RECTANGLE_PLASTIC * yields / each["bending"])


def _clutch_torque(loads: Loads, held: AntiReverse) -> Sample:
    gear = loads.sheet.handle.shaft_diameter if loads.sheet.handle else None
    over = gear or (loads.sheet.drag.thread.pitch_diameter if loads.sheet.drag else 6e-3)
    sleeve = loads.stated_or_guessed("clutch sleeve", held.sleeve_diameter, over + 2e-3, over + 4e-3)
    held_by = anti_reverse.roller_clutch_torque(
        FEWEST_ROLLERS,
        loads.between("rollers", *ROLLER),
        loads.stated_or_guessed("roller length", held.roller_length, *ROLLER_LENGTH),
        sleeve / 2,
        loads.between("rollers press", *ROLLER_PRESSURE),
    )
    return np.asarray(held_by * loads.between("more rollers", 1.0, MOST_ROLLERS / FEWEST_ROLLERS))


def _drive_shaft(loads: Loads) -> Limit | None:
    sheet = loads.sheet
    if sheet.gears is None or sheet.drag is None or sheet.reel.kind in ON_THE_ROTOR:
        return None
    thread = sheet.drag.thread.pitch_diameter + sheet.drag.thread.pitch * 0.65
    stated = sheet.handle.shaft_diameter if sheet.handle else None
    diameter = loads.stated_or_guessed("drive shaft", stated, thread, 1.25 * thread)
    metal = part_material(sheet, "drive shaft", "stainless steel")
    flats = loads.between("drive shaft flats", 0.7, 0.9)
    each = handle.shaft_stress(0.0, 1.0, diameter)
    torque = flats * TORSION_PLASTIC * loads.yields_at("drive shaft", metal) / each
    how = "its size from the sheet" if stated else "its size guessed from the star's thread, judgement prior"
    return Limit(
        "drive shaft",
        "drive shaft",
        "the drive shaft twists and stays twisted, and its flats round off",
        torque / loads.handle_torque,
        "round shaft yielded through in torsion, less a tenth to a third for its flats",
        f"{material_words(metal, structural_material(metal).yield_strength)}; {how}",
    )


def _star_thread(loads: Loads) -> Limit | None:
    drag = loads.sheet.drag
    if drag is None or drag.lever or not loads.state.pairs:
        return None
    ones = np.ones(loads.samples)
    for_each = drag_train.spool_torque(loads.sheet, loads.state, loads.draws, ones) / loads.radius
    metal = part_material(loads.sheet, "star", "brass") if drag.control == "star" else "brass"
    nut = "brass" if metal == "aluminium alloy" else metal
    turns = loads.between("star thread: turns in touch", 0.5, 0.9) * drag.thread.pitch_diameter
    crest = drag.thread.pitch_diameter + 0.65 * drag.thread.pitch
    strips = threads.strip_force(crest, turns, SHEAR_YIELD * loads.yields_at("star nut", nut))
    return Limit(
        "star thread",
        f"thread of the {drag.control}",
        f"the {drag.control}'s nut strips its thread on the shaft",
        strips * for_each,
        "nut's thread stripped in shear, the clamp taken from the drag",
        f"{material_words(nut, structural_material(nut).yield_strength)}; 0.5 to 0.9 diameters of thread in "
        "touch: judgement prior",
    )


def _handle(loads: Loads) -> Limit | None:
    held = loads.sheet.handle
    if held is None:
        return None
    metal = held.material or part_material(loads.sheet, "handle arm", "aluminium alloy")
    wide = loads.stated_or_guessed("handle arm width", held.section_width, 8e-3, 13e-3)
    thick = loads.stated_or_guessed("handle arm thickness", held.section_thickness, 2.5e-3, 4e-3)
    each = handle.arm_stress(1 / held.arm_length, held.arm_length, wide, thick)
    moment = RECTANGLE_PLASTIC * loads.yields_at("handle", metal) / each
    lost = loads.between("lost between spool and handle", 0.75, 0.95)
    stated = held.section_width and held.section_thickness
    how = "its section from the sheet" if stated else "its section in part a judgement prior"
    return Limit(
        "handle",
        "arm of the handle",
        "its arm bends at the boss, if one winds against the pull",
        moment * lost / loads.handle_torque,
        "flat arm yielded through in bending; 75 to 95 % of the hand's work reaches the line",
        f"{material_words(metal, structural_material(metal).yield_strength)}; {how}",
    )
