"""What a set of works may promise, and which end of it."""

from spoolwright.judgement.prediction import predict
from spoolwright.judgement.promises import promised_readings
from spoolwright.judgement.works import chosen
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def promised(*names: str):
    works = chosen(list(names), "round multiplier")
    return {p.reading_kind: p for p in promised_readings(predict(SHEET, {}, names, samples=300), works)}


def test_only_what_the_works_move_is_promised() -> None:
    assert set(promised("new-spool-bearings")) == {"spin_time"}
    assert promised("new-pawl") == {}


def test_a_start_up_ratio_is_promised_as_at_most_and_a_spin_as_at_least() -> None:
    found = promised("carbon-drag-set", "new-spool-bearings")
    assert found["start_up_ratio"].low is None
    assert found["start_up_ratio"].high is not None
    assert found["spin_time"].low is not None
    assert found["spin_time"].high is None


def test_a_pull_is_promised_between_two_ends() -> None:
    pull = promised("carbon-drag-set")["pull_full"]
    assert pull.low is not None
    assert pull.high is not None
    assert pull.low < pull.predicted.middle < pull.high
