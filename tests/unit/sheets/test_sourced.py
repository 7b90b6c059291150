"""A value of a data file with its source."""

from __future__ import annotations

import pytest

from spoolwright.sheets.sourced import sourced, table, unknown


def test_a_range_has_a_middle() -> None:
    value = sourced({"low": "1 MPa", "high": "3 MPa", "source": "a book", "how": "opened"}, "pressure")
    assert (value.low, value.middle, value.high) == (1e6, 2e6, 3e6)


def test_one_value_is_a_range_of_nothing() -> None:
    value = sourced({"value": "0.3", "source": "a book", "how": "from memory"}, "ratio")
    assert value.low == value.high == 0.3


@pytest.mark.parametrize(
    "entry",
    [
        {"value": "0.3", "source": "", "how": "opened"},
        {"value": "0.3", "source": "a book", "how": "somehow"},
        {"low": "0.4", "high": "0.3", "source": "a book", "how": "opened"},
        {"value": "0.3 kg", "source": "a book", "how": "opened"},
    ],
)
def test_a_value_without_source_or_sense_is_refused(entry: dict[str, str]) -> None:
    with pytest.raises(ValueError):  # noqa: PT011 - four different sentences, one kind
        sourced(entry, "ratio")


def test_data_files_lie_beside_the_module() -> None:
    assert "friction" in table("materials.toml")


def test_an_unknown_name_comes_with_the_known_ones() -> None:
    assert unknown("oil", "butter", ("a", "b")).args == ("oil “butter” is not in the data file; known: a, b",)
