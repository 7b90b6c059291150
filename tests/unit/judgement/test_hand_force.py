"""What a hand has to do to wind in against a pull."""

import pytest

from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.hand_force import hand_force, in_words
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet


def test_against_a_case_worked_by_hand() -> None:
    """5 kg at a radius of 22 mm, ratio 6.3, 80 %: 193 N on 45 mm (statics; the case: common practice)."""
    sheet = reel_sheet.load("tarvak-58r")
    assert sheet.handle is not None
    assert sheet.gears is not None
    geared = sheet.gears.model_copy(update={"main_teeth": 63, "pinion_teeth": 10})
    arm = sheet.handle.model_copy(update={"arm_length": 0.045})
    found = hand_force(sheet.model_copy(update={"gears": geared, "handle": arm}), 5 * 9.80665, 0.022)
    assert found is not None
    assert found[1] == pytest.approx(19.3 * 9.80665, rel=0.03)
    assert found[0] < found[1] < found[2]


def test_a_longer_handle_asks_less_of_the_hand() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    longer = changed(sheet, [all_works()["longer-handle"]])
    was, now = hand_force(sheet, 50.0, 0.02), hand_force(longer, 50.0, 0.02)
    assert was is not None
    assert now is not None
    assert now[1] == pytest.approx(was[1] / 1.30)


def test_where_there_is_no_handle_nothing_is_said() -> None:
    bare = reel_sheet.load("tarvak-58r").model_copy(update={"handle": None})
    assert hand_force(bare, 50.0, 0.02) is None
    assert in_words(bare, 50.0, 0.02) == ()
