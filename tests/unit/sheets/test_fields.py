"""The kinds of field: quantities as text, known names, bearing sizes."""

from __future__ import annotations

import pytest
from pydantic import TypeAdapter, ValidationError

from spoolwright.sheets.fields import BearingSize, Friction, Known, Length, LengthOrZero, Material, nearest

SIZE = TypeAdapter(BearingSize)


def refusal(kind: object, typed: object) -> dict[str, str]:
    with pytest.raises(ValidationError) as caught:
        TypeAdapter(kind).validate_python(typed)
    return dict(caught.value.errors()[0]["ctx"])


def test_a_quantity_becomes_si() -> None:
    assert TypeAdapter(Length).validate_python("24.5 mm") == 0.0245


def test_a_bare_number_is_refused_where_a_unit_is_needed_and_taken_where_none_is() -> None:
    assert "bare number" in refusal(Length, 24.5)["what"]
    assert TypeAdapter(Friction).validate_python(0.12) == 0.12
    assert TypeAdapter(Friction).validate_python("12 %") == 0.12


@pytest.mark.parametrize("typed", ["-18 mm", "0 mm", "0.6 m"])
def test_a_length_out_of_range_says_what_the_range_is(typed: str) -> None:
    told = refusal(Length, typed)
    assert told["what"] == f"“{typed}” is out of range"
    assert told["accepted"].endswith("more than 0 mm, at most 500 mm")


def test_nothing_at_all_is_a_length_only_where_it_may_be() -> None:
    assert TypeAdapter(LengthOrZero).validate_python("0 mm") == 0.0


def test_an_unknown_material_is_answered_with_the_nearest() -> None:
    told = refusal(Material, "stainles steel")
    assert told["what"] == "“stainles steel” is not a known material; nearest is “stainless steel”"
    assert "brass" in told["accepted"]


def test_a_name_that_is_like_nothing_gets_no_guess() -> None:
    assert "nearest" not in refusal(Material, "xyzzy")["what"]


@pytest.mark.parametrize("typed", ["3 x 10 x 4 mm", "3x10x4 mm", "3 × 10 × 4 mm", "0.3 x 1 x 0.4 cm"])
def test_a_bearing_size_has_three_sizes_and_one_unit(typed: str) -> None:
    size = SIZE.validate_python(typed)
    assert (size.bore, size.outer, size.width) == pytest.approx((0.003, 0.010, 0.004))


def test_a_bearing_size_takes_halves() -> None:
    assert SIZE.validate_python("8 x 12 x 3.5 mm").width == 0.0035


@pytest.mark.parametrize(
    "typed",
    ["3 x 10 mm", "3 x 10 x 4", "10 x 3 x 4 mm", "3 x 10 x 40 mm", "3 x 10 x 4 kg", "623", 3, "x" * 90],
)
def test_what_is_no_bearing_size_is_refused(typed: object) -> None:
    assert "bore x outer x width" in refusal(BearingSize, typed)["accepted"]


def test_the_nearest_name_does_not_mind_capitals() -> None:
    assert nearest("BRASS", ("brass", "bronze")) == "brass"
    assert nearest("q", ("brass", "bronze")) is None


def test_the_schema_of_a_known_name_lists_the_names() -> None:
    known = Known("colour", lambda: ("grey", "black"))
    assert known.__get_pydantic_json_schema__(None, None) == {"type": "string", "enum": ["grey", "black"]}  # type: ignore[arg-type]
