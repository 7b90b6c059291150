"""What a set of works may promise, and which end of it."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.promises import at_radius, promised_readings, proving_conditions
from spoolwright.judgement.taken import Taken
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


HALF = {"line": "on", "radius": 0.0235, "brakes": "none", "star_turns": 2.5, "temperature": 291.0}


def found(kind: str, dimension: str, **conditions: object) -> Taken:
    return Taken(kind, Measured(1.5, 0.03, dimension), {**HALF, **conditions})


def test_a_ratio_is_proved_as_it_was_measured() -> None:
    """Radius of the trade handbook, chapter 9, scenario 1."""
    ratio = promised("carbon-drag-set")["start_up_ratio"]
    told = proving_conditions(ratio, [found("start_up_ratio", "ratio")])
    assert told == {"line": "on", "radius": 0.0235, "star_turns": 2.5}
    assert proving_conditions(ratio, [], star_turns=3.0) == {"star_turns": 3.0}


def test_a_full_pull_is_proved_at_its_radius_and_nobody_counts_the_star() -> None:
    pull = promised("carbon-drag-set")["pull_full"]
    told = proving_conditions(pull, [found("pull_full", "force", radius=0.0185)])
    assert "star_turns" not in told
    assert told["radius"] == pull.predicted.conditions["radius"]
    assert told["line"] == "on"


def test_a_spin_is_proved_without_line_whatever_was_measured_before() -> None:
    spin = promised("new-spool-bearings")["spin_time"]
    with_line = proving_conditions(spin, [found("spin_time", "time")])
    assert with_line == {"line": "off", "brakes": "off"}
    without = proving_conditions(spin, [found("spin_time", "time", line="off")])
    assert without == {"line": "off", "brakes": "none"}


def test_with_less_line_on_the_spool_the_same_torque_pulls_harder() -> None:
    pull = promised("carbon-drag-set")["pull_full"]
    less = at_radius(pull, 0.9 * float(pull.predicted.conditions["radius"]))
    assert less.low == pytest.approx(pull.low / 0.9)
    assert less.predicted.middle == pytest.approx(pull.predicted.middle / 0.9)
    assert less.predicted.conditions["radius"] < pull.predicted.conditions["radius"]
    ratio = promised("carbon-drag-set")["start_up_ratio"]
    assert at_radius(ratio, 0.01) is ratio
    with pytest.raises(ValueError, match="radius"):
        at_radius(pull, 0.0)
