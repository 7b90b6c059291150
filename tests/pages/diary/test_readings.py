"""A reading as lines of a bench book."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary.told.readings import Result, told, torque_words

G = 9.80665
GIVEN = {
    "line": "on",
    "radius": 0.0235,
    "pull_number": 2,
    "pulls_of": 3,
    "star_turns": 1.0,
    "temperature": 292.15,
}


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def pulls() -> list[Result]:
    return [
        Result("pull_start", Measured(3.9 * G, 0.1, "force")),
        Result("pull_run", Measured(2.6 * G, 0.1, "force")),
        Result("start_up_ratio", Measured(1.5, 0.02, "ratio")),
        Result("judder", Measured(0.09, 0.004, "ratio")),
        Result("drift", Measured(0.01, 0.01, "ratio")),
    ]


def test_a_pull_has_its_conditions_once_and_its_torque_at_each() -> None:
    # Handbook scenario 1 (invented sums): 2.6 kg at 23.5 mm is 0.599 N m.
    lines = told(pulls(), GIVEN, (), "metric", "pull trace").lines
    assert plain(lines[0].conditions).startswith(
        "line on, radius 23.5 mm, 1 turn of the star from free, second pull of three, 19.0 °C"
    )
    assert plain(lines[1].conditions).startswith("same pull; 0.599 N m ±")
    assert lines[2].verdict.startswith("To be acted on")


def test_judder_and_drift_are_said_below_in_percent() -> None:
    together = told(pulls(), GIVEN, (), "metric", "pull trace").together
    assert plain(together[0]).startswith("Judder 9.00 % ± 0.80 %, wants a look: good is up to 8 %")
    assert plain(together[1]) == "Drift 1.0 % ± 2.0 % in ten seconds."


def test_alone_they_have_lines_of_their_own() -> None:
    assert told([pulls()[3]], GIVEN, (), "metric").lines[0].quantity == "Judder"


def test_tries_are_named_behind_their_mean() -> None:
    result = Result("mass", Measured(0.3383, 0.0006, "mass"), (0.338, 0.338, 0.339))
    assert plain(told([result], {"line": "on"}, (), "metric").lines[0].conditions) == (
        "line on; mean of 338 g, 338 g, 339 g"
    )


def test_a_count_that_is_sure_has_no_spread() -> None:
    line = told(
        [Result("teeth", Measured(51.0, 0.0, "count"))], {"place_measured": "main gear"}, (), "metric"
    )
    assert (line.lines[0].value, line.lines[0].spread) == ("51", "")


@pytest.mark.parametrize(("system", "unit"), [("metric", "N m"), ("imperial", "lbf in")])
def test_the_torque_is_in_the_readers_units(system: str, unit: str) -> None:
    assert unit in plain(torque_words(Measured(25.0, 0.1, "force"), 0.0235, system))
