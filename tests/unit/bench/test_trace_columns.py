"""Which column is which, and every question where the file does not say."""

import pytest

from spoolwright.bench import delimited
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.trace_columns import Picked, pick, values
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable


def picked(text: str, **answers: object) -> Picked:
    return pick(delimited.read(text), TraceForm(**answers))  # type: ignore[arg-type]


def rows(*columns: str) -> str:
    return "".join(";".join(f"{i}{c}" for c in columns) + "\n" for i in range(4))


def test_units_alone_are_enough() -> None:
    found = picked("s;N\n" + rows(".0", ".5"))
    assert (found.time_unit, found.force_unit) == ("s", "N")


def test_the_one_force_among_other_signals_is_taken() -> None:
    found = picked("Time [s];Way [mm];Load [kg];Peak load [kg];Temp\n" + rows(".0", ".1", ".2", ".3", ".4"))
    assert found.force.title == "Load [kg]"


def test_two_forces_are_asked_about() -> None:
    with pytest.raises(NeedsAnswer) as asked:
        picked("Time [s];Left [N];Right [N]\n" + rows(".0", ".1", ".2"))
    assert asked.value.missing == ("force_column",)
    assert "Left [N]" in asked.value.accepted


@pytest.mark.parametrize("name", ["Right [N]", "right", "3"])
def test_the_answer_may_be_a_title_a_part_of_it_or_a_number(name: str) -> None:
    text = "Time [s];Left [N];Right [N]\n" + rows(".0", ".1", ".2")
    assert picked(text, force_column=name).force.index == 2


def test_a_column_that_is_not_there_is_refused_with_those_that_are() -> None:
    with pytest.raises(Unreadable, match="Left"):
        picked("Time [s];Left [N]\n" + rows(".0", ".1"), force_column="Middle")


def test_everything_that_is_missing_is_asked_at_once() -> None:
    with pytest.raises(NeedsAnswer) as asked:
        picked("Time;Force\n0.0;1.5\n0.1;2.5\n0.2;3.5\n")
    assert asked.value.missing == ("time_unit", "force_unit")


@pytest.mark.parametrize(("step", "unit"), [(0.02, "s"), (20.0, "ms"), (20_000.0, "us")])
def test_a_unit_of_time_is_found_where_only_one_makes_a_pull_of_it(step: float, unit: str) -> None:
    found = picked("Time;Force (N)\n" + "".join(f"{i * step:g};{i % 7}.5\n" for i in range(200)))
    assert (found.time_unit, found.only_fits) == (unit, True)


def test_a_unit_of_time_that_fits_in_no_way_is_asked_for() -> None:
    with pytest.raises(NeedsAnswer) as asked:
        picked("Time;Force (N)\n" + "".join(f"{i / 1000};{i % 7}.5\n" for i in range(200)))
    assert asked.value.missing == ("time_unit",)


@pytest.mark.parametrize("line", ["Unit: kg", "Units;s;kg", "Einheit = kg", "Force unit (kg)"])
def test_a_unit_in_a_line_above_counts_for_a_column_without_one(line: str) -> None:
    assert picked(f"{line}\nTime (s);Force\n" + rows(".0", ".5")).force_unit == "kg"


def test_a_pull_shown_in_two_units_is_one_pull() -> None:
    text = "Time (s);Force (N);Force (kg)\n" + "".join(f"{i};{9.81 * i:.2f};{i}.00\n" for i in range(9))
    assert picked(text).force.title == "Force (N)"


def test_a_unit_that_is_none_is_asked_for_again() -> None:
    with pytest.raises(NeedsAnswer, match="“stone” is no unit of force"):
        picked("s;x\n" + rows(".0", ".5"), force_unit="stone")


def test_a_file_of_one_column_asks_for_the_rate() -> None:
    with pytest.raises(NeedsAnswer) as asked:
        picked("Load [N]\n1.5\n2.5\n1.5\n")
    assert asked.value.missing == ("rate",)


@pytest.mark.parametrize(
    ("above", "rate"),
    [
        ("Sample rate: 200 Hz", 200.0),
        ("Sampling frequency;0.5 kHz", 500.0),
        ("Samples per second: 80 /s", 80.0),
        ("Interval (ms);20", 50.0),
        ("Interval: 0.01 s", 100.0),
    ],
)
def test_a_rate_that_stands_above_the_numbers_is_found(above: str, rate: float) -> None:
    assert picked(f"{above}\nLoad [N]\n1.5\n2.5\n1.5\n").rate == pytest.approx(rate)


def test_a_column_that_counts_the_rows_is_no_time() -> None:
    text = "No;Load [N]\n1;1.5\n2;2.5\n3;1.5\n"
    assert picked(text, rate=100.0).force.index == 1
    with pytest.raises(NeedsAnswer) as asked:
        picked(text)
    assert asked.value.missing == ("rate",)


def test_a_rate_that_no_gauge_has_is_refused() -> None:
    with pytest.raises(Unreadable, match="no gauge's rate"):
        picked("Load [N]\n1.5\n2.5\n1.5\n", rate=1e9)


def test_ticks_are_sent_to_the_other_reader() -> None:
    with pytest.raises(Unreadable, match="spin"):
        picked("tick_time_s\n0.0\n0.3\n0.7\n")


def test_values_are_si() -> None:
    table = delimited.read("Time [ms];Load [kg]\n0;1\n500;2\n1000;3\n")
    time, force = values(table, pick(table, TraceForm()))
    assert time.tolist() == [0.0, 0.5, 1.0]
    assert force[0] == pytest.approx(9.80665)
