"""Facts of the trade about drags: how many faces slip in the usual stacks, and what the house's reels pull.

Common practice, no source, unless a check says otherwise.
"""

from __future__ import annotations

import pytest

from spoolwright.mechanics import clutch, spool, springs, threads
from spoolwright.sheets import materials, reel_sheet
from spoolwright.sheets.drag_stack import slipping_pairs
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Washer

POUND = 4.4482216152605
KILO = 9.80665
MEMBERS = {
    "F": ("friction disc", "woven carbon", "neither"),
    "K": ("keyed disc", "stainless steel", "shaft"),
    "E": ("eared disc", "stainless steel", "gear"),
    "G": ("main gear", "brass", "gear"),
    "R": ("ratchet", "carbon steel", "shaft"),
    "S": ("spool", "aluminium alloy", "spool"),
    "D": ("eared disc", "stainless steel", "spool"),
    "P": ("pad on the spool", "woven carbon", "spool"),
}


def stack(letters: str) -> tuple[Washer, ...]:
    """A stack from letters, inner end first: F friction, K keyed, E eared, G gear, R ratchet, S spool."""
    return tuple(
        Washer.model_validate(
            {
                "name": f"{MEMBERS[letter][0]} {number}",
                "outer_diameter": "26 mm",
                "inner_diameter": "10 mm",
                "thickness": "1 mm",
                "material": MEMBERS[letter][1],
                "turns_with": MEMBERS[letter][2],
                "lubrication": "greased",
            }
        )
        for number, letter in enumerate(letters, 1)
    )


PATTERNS = {
    "one disc": ("GFK", 1),
    "under the gear and one": ("RFGFK", 2),
    "classic three": ("GFKFEFK", 3),
    "classic three and one under the gear": ("RFGFKFEFK", 4),
    "five": ("GFKFEFKFEFK", 5),
    "five and one under the gear": ("RFGFKFEFKFEFK", 6),
    "small fixed spool": ("SFKFDFK", 3),
    "lever drag, single": ("KP", 1),
    "lever drag, twin": ("KPSPK", 2),
}


@pytest.mark.parametrize("name", PATTERNS)
def test_usual_stack_has_its_pairs(name: str) -> None:
    """Common practice, no source: generic patterns of drag stacks."""
    letters, pairs = PATTERNS[name]
    reading = slipping_pairs(stack(letters))
    assert len(reading.pairs) == pairs
    assert reading.warnings == ()


@pytest.mark.parametrize(
    ("slug", "name"),
    [
        ("tarvak-58r", "five"),
        ("tarvak-54c", "five and one under the gear"),
        ("pellmar-70", "five and one under the gear"),
        ("ostrell-s71", "classic three and one under the gear"),
        ("lumvik-4000", "small fixed spool"),
        ("pellmar-30-2", "lever drag, single"),
    ],
)
def test_a_shipped_stack_is_one_of_the_usual_ones(slug: str, name: str) -> None:
    """Common practice, no source: the house's reels are built in the trade's patterns."""
    drag = reel_sheet.load(slug).drag
    assert drag is not None
    assert len(slipping_pairs(drag.stack).pairs) == PATTERNS[name][1]


def test_two_faces_of_a_loose_disc_are_one_pair() -> None:
    """Common practice, no source: counting faces instead of pairs doubles the predicted drag."""
    assert len(slipping_pairs(stack("GFK")).pairs) == 1


def test_two_keyed_discs_that_touch_are_told() -> None:
    """Common practice, no source: two keyed discs touching, and the drag is nothing then locked."""
    reading = slipping_pairs(stack("GFKKEFK"))
    assert "from nothing to locked" in reading.warnings[0]
    assert "metal on metal" in reading.warnings[1]
    assert [pair.face_material for pair in reading.pairs] == ["woven carbon", "bare metal", "woven carbon"]


def test_an_eared_and_a_keyed_disc_that_changed_places_lose_two_pairs() -> None:
    """Common practice, no source: keyed and eared discs alternate, or pairs are lost."""
    reading = slipping_pairs(stack("GFEFKFK"))
    assert len(reading.pairs) == 1
    assert len([warning for warning in reading.warnings if "one pair is lost" in warning]) == 2


def strongest_pull(sheet: ReelSheet, material: str | None = None) -> float:
    """Pull at a full spool, star hard on [N]: springs flat or hand at its end, whichever is first."""
    drag = sheet.drag
    assert drag is not None
    pack, thread = drag.springs, drag.thread
    flat = springs.disc_spring_force(
        pack.cone_height,
        pack.outer_diameter,
        pack.inner_diameter,
        pack.thickness,
        pack.cone_height,
        pack.youngs_modulus,
    )
    by_hand = threads.axial_force(
        drag.hand_torque,
        thread.pitch,
        thread.pitch_diameter,
        thread.friction,
        thread.flank_angle,
        thread.bearing_radius,
        thread.bearing_friction,
    )
    clamp = min(float(flat) * min(pack.nests), float(by_hand))
    torque = 0.0
    for pair in slipping_pairs(drag.stack).pairs:
        entry = materials.friction_material(material or pair.face_material)
        friction = entry.friction(pair.lubrication).middle
        torque += float(clutch.friction_torque(clamp, pair.outer_radius, pair.inner_radius, friction))
    return float(spool.line_pull(torque, sheet.drag_ratio, sheet.spool.full_radius))


def test_the_older_mid_size_reel_gives_eight_to_ten_pounds_and_no_more() -> None:
    """Common practice, no source."""
    assert 8.0 <= strongest_pull(reel_sheet.load("tarvak-52")) / POUND <= 10.0


def test_its_newer_sister_gives_eighteen_to_twenty() -> None:
    """Common practice, no source."""
    assert 18.0 <= strongest_pull(reel_sheet.load("tarvak-54c")) / POUND <= 20.0


def test_the_large_reel_gives_close_to_thirty() -> None:
    """Common practice, no source."""
    assert strongest_pull(reel_sheet.load("pellmar-70")) / POUND == pytest.approx(30.0, abs=1.5)


def test_the_pier_reel_pulls_as_in_its_story() -> None:
    """Invented sums of the pier reel's story: 5.8 kg as found, 6.9 kg on a carbon set, at 23.5 mm."""
    sheet = reel_sheet.load("tarvak-58r")
    assert sheet.spool.full_radius == pytest.approx(0.0235, abs=1e-9)
    assert strongest_pull(sheet) / KILO == pytest.approx(5.8, abs=0.05)
    on_carbon = strongest_pull(sheet, "woven carbon")
    assert on_carbon / KILO == pytest.approx(6.9, abs=0.05)
    assert on_carbon * 0.0235 == pytest.approx(1.590, rel=0.01)
    assert sheet.drag is not None
    assert sheet.drag.turns_to_full == 5


def test_the_worked_pull_of_a_stack_of_four() -> None:
    """Common practice, no source: 0.18, four pairs, 1,200 N, 14 by 6 mm, ratio 5.3, 22 mm give 78.1 N."""
    torque = clutch.friction_torque(1200.0, 0.014, 0.006, 0.18, faces=4, model="uniform-pressure")
    assert float(spool.line_pull(torque, 5.3, 0.022)) == pytest.approx(78.1, abs=0.05)
    assert float(spool.line_pull(torque, 7.1, 0.022)) == pytest.approx(58.3, abs=0.05)
