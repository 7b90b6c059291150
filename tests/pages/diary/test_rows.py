"""Lines of one sort: empty ones are none, faults name their line, and there is always one more to fill in."""

from __future__ import annotations

from spoolwright.pages.diary.ask.rows import MOST, rows
from spoolwright.pages.diary.ask.work import PartRow


def test_an_empty_form_has_empty_lines() -> None:
    found = rows(PartRow, "part", None)
    assert len(found) == 2
    assert [row.number for row in found] == [1, 2]


def test_what_was_written_stands_first() -> None:
    found = rows(PartRow, "part", None, started=[{"what": "pawl"}])
    assert [row["what"].value() for row in found] == ["pawl", None, None]


def test_lines_that_came_are_followed_by_empty_ones() -> None:
    found = rows(PartRow, "part", {"part-0-what": "pawl", "part-2-what": "worm"})
    assert len(found) == 5
    assert [row.is_blank for row in found] == [False, True, False, True, True]


def test_a_fault_names_its_line() -> None:
    row = rows(PartRow, "part", {"part-0-what": "", "part-0-made_from": "0.8 mm wire"})[0]
    assert row.faults() == ["Part 1: This field is required."]


def test_an_empty_line_has_no_fault() -> None:
    assert rows(PartRow, "part", {"part-0-count": "1", "part-0-source": "new"})[0].faults() == []


def test_nobody_sends_a_thousand_lines() -> None:
    assert len(rows(PartRow, "part", {"part-99999-what": "x"})) == MOST


def test_lines_of_another_sort_are_not_counted() -> None:
    assert len(rows(PartRow, "part", {"oil-7-point": "worm", "x-part-9-what": "y"})) == 2
