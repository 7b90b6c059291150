"""Readings with their conditions, however they are handed over."""

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.taken import Taken, listed

PULL = Measured(25.0, 0.5, "force")


def test_bare_values_readings_and_several_readings_come_in_one_row() -> None:
    one = Taken("pull_run", PULL, {"star_turns": 1})
    two = Taken("pull_run", PULL, {"star_turns": 2})
    found = listed(
        {"mass": Measured(0.3, 0.001, "mass"), "pull_full": Taken("pull_full", PULL), "pull_run": [one, two]}
    )
    assert [taken.kind for taken in found] == ["mass", "pull_full", "pull_run", "pull_run"]
    assert found[0].conditions == {}


def test_conditions_are_read_by_their_kind() -> None:
    taken = Taken("pull_run", PULL, {"radius": 0.02, "line": "on", "anti_reverse_cold": True})
    assert taken.number("radius") == 0.02
    assert taken.number("star_turns") is None
    assert taken.number("anti_reverse_cold") is None
    assert taken.word("line") == "on"
    assert taken.word("radius") == ""
