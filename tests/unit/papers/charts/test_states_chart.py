"""Several states of a reel on one chart: told apart by dashes and names, their bands beside them."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Curve, Rule, Story, Zone
from spoolwright.papers.charts.states_chart import LINE_STYLES, _apart

G = 9.80665
X = [0.0, 50.0, 100.0]


def curve(words: str, kg: float, band: float = 0.1) -> Curve:
    middle = [kg * G * share for share in (1.0, 1.2, 1.6)]
    return Curve(words, X, middle, [m * (1 - band) for m in middle], [m * (1 + band) for m in middle])


def chart(*curves: Curve, **more: Any) -> charts.Chart:
    story = Story("Pull against line taken.", "It grows.", more.pop("rules", ()))
    return charts.states(Along("line_length", "line taken"), Along("force", "pull"), curves, story, **more)


def marks(found: charts.Chart, kind: str) -> list[dict[str, Any]]:
    return [layer for layer in found.spec["layer"] if layer["mark"]["type"] == kind]


def test_the_first_is_solid_in_the_accent_and_the_others_have_dashes_of_their_own() -> None:
    lines = marks(chart(curve("today", 4), curve("Improve", 5), curve("Most", 6)), "line")
    dashes = {tuple(line["mark"]["strokeDash"]) for line in lines}
    assert len(dashes) == 3
    solid = next(line for line in lines if not line["mark"]["strokeDash"])
    assert solid["mark"]["color"] == charts.ACCENT
    assert {line["mark"]["color"] for line in lines} == {charts.ACCENT, "currentColor"}


def test_each_is_named_at_its_end_and_none_sits_on_another() -> None:
    found = chart(
        curve("today", 4.0), curve("Improve", 4.05), curve("The most this reel should be given", 4.1)
    )
    names = marks(found, "text")
    assert [name["mark"]["text"] for name in names] == [
        ["today"],
        ["Improve"],
        ["The most this", "reel should be", "given"],
    ]
    assert len({name["mark"]["dy"] for name in names}) == 3


@pytest.mark.parametrize(
    "wanted", [{0: 10.0, 1: 11.0, 2: 12.0}, {0: 195.0, 1: 196.0, 2: 5.0}, {0: 0.0, 1: 0.0, 2: 0.0}]
)
def test_names_keep_their_order_their_distance_and_stay_on_the_plot(wanted: dict[int, float]) -> None:
    sizes = {0: 18.0, 1: 18.0, 2: 48.0}
    at = _apart(wanted, sizes, 200.0)
    order = sorted(wanted, key=lambda number: wanted[number])
    assert sorted(at, key=lambda number: at[number]) == order
    assert all(
        at[b] - at[a] >= (sizes[a] + sizes[b]) / 2 - 1e-9 for a, b in zip(order, order[1:], strict=False)
    )
    assert all(0 <= level <= 200 for level in at.values())


def test_a_single_state_needs_no_name() -> None:
    assert marks(chart(curve("as built", 4)), "text") == []


def test_the_band_of_an_option_is_a_bar_at_a_place_of_its_own() -> None:
    """By hand: 92 % of 100 m, between 1.2 and 1.6 of 5 kg; 10 % down is 0.9 of the middle there."""
    bars = marks(chart(curve("today", 4), curve("Improve", 5), curve("Most", 6)), "rule")
    improve = next(bar for bar in bars if bar["data"]["values"][0]["x"] == pytest.approx(92.0))
    assert improve["data"]["values"][0]["y"] == pytest.approx(0.9 * 5 * (1.2 + 0.4 * 42 / 50), rel=1e-3)
    assert len({bar["data"]["values"][0]["x"] for bar in bars}) == 2


def test_the_table_has_a_column_a_state_with_its_interval() -> None:
    found = chart(curve("today", 4), curve("Improve", 5))
    assert found.head == ("line taken", "today", "Improve")
    assert found.rows[0] == ("0 m", "4.00 kg, 3.60 to 4.40 kg", "5.0 kg, 4.5 to 5.5 kg")


def test_a_curve_of_other_positions_is_read_at_the_nearest() -> None:
    found = chart(curve("today", 4), Curve("measured", [10.0, 55.0, 90.0], [G, 2 * G, 3 * G]))
    assert [row[2] for row in found.rows] == ["1.00 kg", "2.00 kg", "3.00 kg"]


def test_a_limit_and_a_moment_are_ruled_and_named() -> None:
    rules = (Rule("y", 9 * G, "the line breaks"), Rule("x", 80.0, "now"))
    found = chart(curve("today", 4), rules=rules)
    assert {mark["mark"]["text"] for mark in marks(found, "text")} == {"the line breaks", "now"}
    assert found.spec["layer"][0]["encoding"]["y"]["scale"]["domain"][1] > 9


def test_a_path_that_turns_back_is_drawn_in_its_own_order() -> None:
    line = marks(chart(Curve("cast", [0.0, 5.0, 4.0], [0.0, G, 0.5 * G])), "line")[0]
    assert [point["x"] for point in line["data"]["values"]] == [0.0, 5.0, 4.0]
    assert line["encoding"]["order"]["field"] == "n"
    assert [point["n"] for point in line["data"]["values"]] == [0, 1, 2]


def test_styles_begin_again_after_the_last() -> None:
    many = chart(*(curve(f"state {k}", 4 + k) for k in range(len(LINE_STYLES) + 1)))
    assert all(line["mark"]["strokeDash"] for line in marks(many, "line")[:-1])


@pytest.mark.parametrize("curves", [(), (Curve("one", [1.0], [1.0]),), (Curve("odd", [1.0, 2.0], [1.0]),)])
def test_nothing_to_draw_is_refused(curves: tuple[Curve, ...]) -> None:
    with pytest.raises(ValueError, match="curves"):
        chart(*curves)


def test_a_limit_that_is_a_range_lies_as_a_strip_behind_the_lines_and_fits_on_the_chart() -> None:
    story = Story("Pull.", "It grows.", zones=(Zone(20 * G, 22 * G, "felt stands"),))
    found = charts.states(Along("line_length", "line"), Along("force", "pull"), [curve("today", 4)], story)
    strip = marks(found, "rect")[0]
    assert strip is found.spec["layer"][0]
    box = strip["data"]["values"][0]
    assert (box["y"], box["y2"]) == pytest.approx((20.0, 22.0))
    assert strip["encoding"]["y"]["scale"]["domain"][1] >= 22.0
    assert any(layer["mark"]["text"] == "felt stands" for layer in marks(found, "text"))
