"""One kind of reading over the life of a reel: what can be compared is joined, what cannot is not."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers.charts import Manner, Then, reading_history, to_svg

KILOGRAM = 9.80665
JUNE = datetime(2025, 6, 3, 9, tzinfo=UTC)


def pull(kilograms: float, days: int, *, visit: int = 402, alike: int = 0, after: bool = False) -> Then:
    measured = Measured(kilograms * KILOGRAM, 0.05 * KILOGRAM, "force")
    return Then(JUNE + timedelta(days=days), visit, measured, alike, after, "line on")


LIFE = [
    pull(2.45, 400, visit=417),
    pull(2.6, 0),
    pull(2.7, 2, after=True),
    pull(2.1, 401, visit=417, alike=1),
]


def lines(spec: dict) -> list[list[float]]:
    return [
        [row["m"] for row in layer["data"]["values"]]
        for layer in spec["layer"]
        if layer["mark"]["type"] == "line"
    ]


def test_readings_stand_in_the_order_of_their_days_with_number_and_state() -> None:
    chart = reading_history("Running pull", LIFE)
    assert chart.rows[0] == ("3 June 2025, number 402, as found, line on", "2.60 kg ± 0.10 kg")
    assert [row[1] for row in chart.rows][1:] == [
        "2.70 kg ± 0.10 kg",
        "2.45 kg ± 0.10 kg",
        "2.10 kg ± 0.10 kg",
    ]
    assert "after the work" in chart.rows[1][0]


def test_only_what_can_be_compared_is_joined() -> None:
    assert lines(reading_history("Running pull", LIFE).spec) == [pytest.approx([2.6, 2.7, 2.45])]


def test_the_sentence_sets_the_last_beside_one_that_it_can_be_compared_with() -> None:
    comparable = LIFE[:3]
    told = reading_history("Running pull", comparable).says
    assert told == "Last read as 2.45 kg ± 0.10 kg on 8 July 2026, 2.70 kg ± 0.10 kg on 5 June 2025: down."
    assert "nothing from before was read under the same conditions" in reading_history("Pull", LIFE).says


def test_a_change_within_what_the_gauges_leave_unsure_is_none() -> None:
    told = reading_history("Running pull", [pull(2.6, 0), pull(2.7, 300, visit=417)]).says
    assert told.endswith("no change that the gauges could show.")


def test_the_reader_chooses_the_units_and_a_share_may_be_said_in_per_cent() -> None:
    assert "lb" in reading_history("Pull", LIFE, manner=Manner("imperial")).rows[0][1]
    judder = Then(JUNE, 402, Measured(0.08, 0.005, "ratio"), 0, False)
    chart = reading_history("Judder", [judder], manner=Manner(unit="%"))
    assert chart.rows[0][1] == "8.0 % ± 1.0 %"


def test_vega_draws_it_with_the_numbers_of_the_visits_under_it() -> None:
    svg = to_svg(reading_history("Running pull", LIFE, width=400).spec)
    for said in ("402", "June 2025", "417", "July 2026", "as found", "after the work"):
        assert f">{said}<" in svg


def test_the_description_stands_for_the_picture() -> None:
    told = reading_history("Running pull", LIFE).description
    assert told.startswith("Running pull over time: 4 readings, from 2.60 kg ± 0.10 kg on 3 June 2025")


def test_nothing_read_is_no_history() -> None:
    with pytest.raises(ValueError, match="Running pull"):
        reading_history("Running pull", [])


def test_a_power_stands_where_a_reader_looks_for_it() -> None:
    drag = Then(JUNE, 402, Measured(4e-10, 2e-11, "quadratic_drag"), 0, False)
    told = reading_history("Drag that grows with the square of speed", [drag])
    assert told.rows[0][1] == "0.400 nN m s² ± 0.040 nN m s²"
