"""Lines to cells: delimiter, decimal mark, header, and where a row goes wrong."""

import pytest

from spoolwright.bench import delimited
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable

ROWS = [(0.0, 1.5), (0.25, 2.75), (0.5, 12.0)]


def written(mark: str, point: str, quote: str = "") -> str:
    lines = [mark.join(f"{quote}{v:.2f}{quote}".replace(".", point) for v in row) for row in ROWS]
    return "\n".join([f"time{mark}force", *lines, ""])


@pytest.mark.parametrize("mark", [";", "\t", "|", " "])
@pytest.mark.parametrize("point", [".", ","])
@pytest.mark.parametrize("quote", ["", '"'])
def test_delimiter_and_decimal_mark_are_found(mark: str, point: str, quote: str) -> None:
    table = delimited.read(written(mark, point, quote))
    assert (table.delimiter, table.decimal) == (mark, point)
    assert table.column(1).tolist() == [1.5, 2.75, 12.0]
    assert table.header == [["time", "force"]]


def test_commas_part_columns_with_points_or_with_quoted_decimal_commas() -> None:
    assert delimited.read(written(",", ".")).column(1).tolist() == [1.5, 2.75, 12.0]
    assert delimited.read(written(",", ",", '"')).column(1).tolist() == [1.5, 2.75, 12.0]


def test_one_column_with_a_decimal_comma_is_one_column() -> None:
    assert delimited.read("tick_s\n0,347\n0,694\n1,042\n").column(0).tolist() == [0.347, 0.694, 1.042]
    assert delimited.read("0,047184\n0,694592\n1,042464\n").width == 1


def test_lines_above_the_numbers_are_kept_and_lines_below_them_passed_over() -> None:
    text = "Gauge A12\nSerial;77\nRate;100 Hz\n\nt [s];F [N]\n0,0;1,0\n0,1;2,0\n0,2;3,0\nend of record\n"
    table = delimited.read(text)
    assert len(table.rows) == 3
    assert table.above[0] == "Gauge A12"
    assert table.header[-1] == ["t [s]", "F [N]"]


def test_a_column_of_words_does_not_disturb() -> None:
    table = delimited.read("t;F;state\n0,0;1,0;OK\n0,1;2,0;OK\n0,2;3,0;OVER\n")
    assert table.number_columns == [0, 1]


def test_times_of_day_become_seconds() -> None:
    table = delimited.read("clock;F\n14:03:01.250;1\n2024-05-01 14:03:01.500;2\n")
    assert table.column(0).tolist() == [50581.25, 50581.5]
    assert delimited.read("a;F\n01:30,5;1\n01:31,0;2\n").column(0).tolist() == [90.5, 91.0]


def test_times_of_day_go_on_after_midnight_and_after_noon() -> None:
    assert delimited.read("clock;F\n23:59:59.5;1\n00:00:00.5;2\n").column(0).tolist() == [86399.5, 86400.5]
    noon = delimited.read("clock;F\n11:59:59 AM;1\n12:00:00 PM;2\n1:00:00 pm;3\n")
    assert noon.column(0).tolist() == [43199.0, 43200.0, 46800.0]


def test_a_unit_in_every_cell_does_not_hide_the_number() -> None:
    table = delimited.read("t;F\n0.0 s;12.5 N\n0.1 s;12.6 N\n")
    assert table.column(1).tolist() == [12.5, 12.6]
    assert (table.unit_in_cells(0), table.unit_in_cells(1)) == ("s", "N")


def test_a_summary_below_the_numbers_is_passed_over() -> None:
    table = delimited.read("t;F\n0;1\n1;2\n2;3\nend of record\nMax;3\n")
    assert len(table.rows) == 3


def test_where_blanks_part_the_columns_a_bracket_belongs_to_its_title() -> None:
    assert delimited.read("time (s)  force (N)\n0.0  1.5\n0.1  1.6\n").header == [["time (s)", "force (N)"]]


@pytest.mark.parametrize("bad", ["nan", "-inf", "OL", "", "1e400", "1.2.3", "--4"])
def test_a_value_that_is_no_number_is_named_with_its_line(bad: str) -> None:
    table = delimited.read(f"t;F\n0;1\n1;2\n2;{bad}\n3;4\n", name="pull.csv")
    with pytest.raises(Unreadable, match=r"pull\.csv, line 4"):
        table.column(1)


def test_a_row_that_is_too_short_is_named() -> None:
    with pytest.raises(Unreadable, match="line 3: column 2 is missing"):
        delimited.read("t;F\n0;1\n1\n2;3\n").column(1)


def test_an_open_quotation_mark_spoils_its_own_line_only() -> None:
    assert len(delimited.read('t;F\n0;1\n"1;2\n2;3\n3;4\n').rows) == 4


def test_a_comma_in_two_meanings_is_refused() -> None:
    with pytest.raises(Unreadable, match="both parts the columns and marks the decimals"):
        delimited.read("time,force\n0,01,12,50\n0,02,12,61\n0,03,12,70\n")


def test_words_without_numbers_are_refused_with_their_beginning() -> None:
    with pytest.raises(Unreadable, match="Dear shop"):
        delimited.read("Dear shop,\nthe drag jerks.\n")


def test_more_rows_than_any_pull_has_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(delimited, "MOST_ROWS", 100)
    with pytest.raises(Unreadable, match="he file has 200 rows"):
        delimited.read("1;2\n" * 200)


def test_an_answer_goes_before_what_is_found() -> None:
    assert delimited.read("1,5;2\n2,5;3\n", delimiter="semicolon", decimal="comma").column(0).tolist() == [
        1.5,
        2.5,
    ]
    with pytest.raises(NeedsAnswer, match="no delimiter"):
        delimited.read("1;2\n", delimiter="slash")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("1\n" * 2_500_000, "2500000 ends of lines"),
        ("0.1;2\n" * 20 + "1;" * 3_000 + "\n", "line 21: the line is 6000 letters long"),
        ((";".join("1" * 300) + "\n") * 30, "300 columns"),
    ],
    ids=["lines without end", "a line without end", "columns without end"],
)
def test_what_is_no_table_is_refused_before_it_fills_the_memory(text: str, words: str) -> None:
    with pytest.raises(Unreadable, match=words) as refused:
        delimited.read(text, name="trace.csv")
    assert refused.value.accepted
