"""What is wrong with a reel: by eye and hand, and by its readings."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.findings import Finding, tags, whats_wrong
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.taken import Taken
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
SOUND = predict(SHEET, {}, samples=500)


def of(*taken: Taken, findings: tuple[Finding, ...] = ()) -> list[str]:
    return [wrong.about for wrong in whats_wrong(SHEET, taken, findings, SOUND)]


@pytest.mark.parametrize(
    ("kind", "value", "dimension", "about"),
    [
        ("start_up_ratio", 1.05, "ratio", []),
        ("start_up_ratio", 1.5, "ratio", ["drag-jerks"]),
        ("judder", 0.12, "ratio", ["drag-jerks"]),
        ("judder", 0.3, "ratio", ["drag-metals-cupped"]),
        ("end_float", 0.42e-3, "length", ["end-float-large"]),
        ("end_float", 0.09e-3, "length", []),
        ("feel", 3.0, "score", ["grease-dried"]),
        ("anti_reverse_slips", 1.0, "count", ["dog-worn"]),
        ("anti_reverse_slips", 0.0, "count", []),
        ("pull_full", 20.0, "force", ["drag-weak"]),
        ("pull_full", 55.0, "force", []),
        ("spin_time", 11.0, "time", ["spool-bearing-gummed"]),
        ("spin_time", 25.0, "time", []),
        ("mass", 0.3, "mass", []),
        ("no such kind", 0.3, "mass", []),
    ],
)
def test_a_reading_outside_what_is_good_is_a_finding(
    kind: str, value: float, dimension: str, about: list[str]
) -> None:
    assert of(Taken(kind, Measured(value, 0.0, dimension))) == about


def test_a_spin_with_the_line_on_is_not_held_against_a_bare_one() -> None:
    assert of(Taken("spin_time", Measured(5.0, 0.0, "time"), {"line": "on"})) == []


def test_a_roller_clutch_is_not_called_a_dog() -> None:
    newer = reel_sheet.load("tarvak-54c")
    assert "roller clutch" in tags(newer)
    slips = [Taken("anti_reverse_slips", Measured(2.0, 0.0, "count"))]
    wrong = whats_wrong(newer, slips, [], predict(newer, {}, samples=200))
    assert [one.about for one in wrong] == ["roller-clutch-slips"]


def test_a_finding_comes_first_and_each_thing_once() -> None:
    worn = Finding("pawl", "F15", "tip worn")
    float_ = Taken("end_float", Measured(0.42e-3, 0.0, "length"))
    assert of(float_, findings=(worn, worn)) == ["pawl-worn", "end-float-large"]


def test_a_finding_that_no_work_answers_is_kept_in_its_own_words() -> None:
    wrong = whats_wrong(SHEET, [], [Finding("frame", "F31", "crack at the foot")], SOUND)
    assert wrong[0].about == ""
    assert wrong[0].words == "crack at the foot"
