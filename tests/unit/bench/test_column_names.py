"""What headers call time and pull, in the languages and units of the gauges."""

import pytest

from spoolwright.bench import delimited
from spoolwright.bench.column_names import columns, factor, known_unit


@pytest.mark.parametrize(
    ("title", "time_unit", "force_unit"),
    [
        ("Time [s]", "s", ""),
        ("Zeit (ms)", "ms", ""),
        ("elapsed_ms", "ms", ""),
        ("Time in min", "min", ""),
        ("tick_time_us", "us", ""),
        ("(s)", "s", ""),
        ("Force (N)", "", "N"),
        ("force_n", "", "N"),
        ("Kraft / kgf", "", "kgf"),
        ("Load, lbf", "", "lbf"),
        ("Pull lb", "", "lb"),
        ("Weight [oz]", "", "oz"),
        ("拉力(N)", "", "N"),
        ("KG", "", "KG"),
        ("Force (Newton)", "", "N"),
        ("Kraft [kp]", "", "kgf"),
        ("Сила (кг)", "", "kg"),
        ("Время (с)", "s", ""),
        ("Displacement [mm]", "", ""),
        ("Input 1 V", "", ""),
        ("Force min", "", ""),
        ("Temperature", "", ""),
    ],
)
def test_the_unit_in_a_header(title: str, time_unit: str, force_unit: str) -> None:
    table = delimited.read(f"{title}|x\n1|2\n2|3\n3|4\n")
    column = columns(table)[0]
    assert (column.time_unit, column.force_unit) == (time_unit, force_unit)


def test_a_unit_may_stand_in_a_line_of_its_own() -> None:
    table = delimited.read("Time|Pull\ns|kg\n0|1\n1|2\n")
    assert [(c.time_unit, c.force_unit) for c in columns(table)] == [("s", ""), ("", "kg")]


def test_a_unit_may_stand_in_every_cell_or_in_a_column_of_units() -> None:
    cells = delimited.read("Time|Pull\n0.0 s|1.5 kg\n0.1 s|1.6 kg\n")
    assert [(c.time_unit, c.force_unit) for c in columns(cells)] == [("s", ""), ("", "kg")]
    beside = delimited.read("Time (s)|Pull|Unit\n0.0|1.5|lb\n0.1|1.6|lb\n")
    assert columns(beside)[1].force_unit == "lb"
    state = delimited.read("Time (s)|Pull|Overload\n0.0|1.5|N\n0.1|1.6|N\n")
    assert columns(state)[1].force_unit == ""


@pytest.mark.parametrize("title", ["Force", "Zug", "Poids", "力", "Load cell"])
def test_words_for_a_pull(title: str) -> None:
    assert columns(delimited.read(f"{title}|x\n1|2\n2|3\n"))[0].says_force


def test_a_peak_that_the_gauge_repeats_is_not_the_signal() -> None:
    assert columns(delimited.read("Peak force N|x\n1|2\n2|3\n"))[0].is_summary


def test_units_are_those_of_the_closed_table() -> None:
    assert known_unit("furlong", "time") == ""
    assert known_unit("V", "force") == ""
    assert factor("kgf", "force") == pytest.approx(9.80665)
    assert factor("us", "time") == pytest.approx(1e-6)
