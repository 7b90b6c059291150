"""The registry of readings."""

from __future__ import annotations

from math import radians

import pytest

from spoolwright.quantities import DIMENSIONS
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reading_kinds import CONDITIONS, ReadingKind

EVERY = list(reading_kinds.kinds().values())
IDS = {
    "mass",
    "line_diameter",
    "line_level",
    "back_play",
    "anti_reverse_slips",
    "handle_torque",
    "feel",
    "teeth",
    "pull_start",
    "pull_run",
    "start_up_ratio",
    "judder",
    "drift",
    "pull_full",
    "drag_torque",
    "pull_per_turn",
    "drag_onset",
    "series_start_ratio",
    "pull_fade",
    "pull_by_speed",
    "bearing_swelling",
    "gear_swelling",
    "click_pull",
    "spin_time",
    "spin_constant",
    "spin_viscous",
    "spin_quadratic",
    "spin_initial_speed",
    "spool_inertia",
    "end_float",
    "radial_play",
    "run_out",
    "spool_gap",
    "clutch_engagement",
    "level_wind_turns",
    "corrosion",
    "lubricant_colour",
    "caliper",
    "disc_thickness",
    "disc_cup",
    "tooth_tip",
    "worn_depth",
    "stop_time",
    "temperature",
}


def test_the_list_of_kinds() -> None:
    assert set(reading_kinds.kinds()) == IDS


@pytest.mark.parametrize("kind", EVERY, ids=lambda k: k.id)
def test_every_kind_says_how_it_is_taken_and_what_it_tells(kind: ReadingKind) -> None:
    assert kind.title
    assert kind.tool
    assert kind.method
    assert kind.tells
    assert kind.row.startswith("R")
    assert kind.dimension in DIMENSIONS
    assert set(kind.conditions) <= set(CONDITIONS)
    assert kind.uncertainty >= 0
    assert kind.scale == () or kind.dimension == "score"


@pytest.mark.parametrize("kind", [k for k in EVERY if k.limits], ids=lambda k: k.id)
def test_good_lies_inside_look_and_limits_are_marked(kind: ReadingKind) -> None:
    for limit in kind.limits:
        assert limit.look[0] <= limit.good[0] <= limit.good[1] <= limit.look[1]
        assert "judgement prior" in limit.mark


def test_a_pull_is_comparable_only_with_its_conditions() -> None:
    needed = {"line", "radius", "pull_number", "pulls_of", "temperature"}
    for name in ("pull_start", "pull_run", "start_up_ratio", "pull_full"):
        assert needed <= set(reading_kinds.kind(name).conditions)
    assert {"line", "brakes", "temperature"} <= set(reading_kinds.kind("spin_time").conditions)


@pytest.mark.parametrize(
    ("name", "value", "tags", "band"),
    [
        ("start_up_ratio", 1.07, (), "good"),
        ("start_up_ratio", 1.25, (), "look"),
        ("start_up_ratio", 1.50, (), "act"),
        ("start_up_ratio", 1.12, ("fly",), "good"),
        ("end_float", 0.00009, (), "good"),
        ("end_float", 0.00042, (), "act"),
        ("end_float", 0.0, (), "act"),
        ("drift", -0.15, (), "look"),
        ("back_play", radians(2), ("roller clutch",), "good"),
        ("back_play", radians(40), (), ""),
        ("handle_torque", 0.05, ("lever drag",), "good"),
        ("handle_torque", 0.05, ("round multiplier",), "act"),
        ("anti_reverse_slips", 1.0, (), "act"),
        ("mass", 0.338, (), ""),
    ],
)
def test_a_value_is_good_or_wants_a_look_or_an_act(
    name: str, value: float, tags: tuple[str, ...], band: str
) -> None:
    assert reading_kinds.kind(name).band(value, *tags) == band


def test_the_tools_uncertainty_grows_with_the_value() -> None:
    pull = reading_kinds.kind("pull_run")
    assert pull.standard_uncertainty(0.0) == pytest.approx(0.05 * 9.80665)
    assert pull.standard_uncertainty(100.0) > 1.0


def test_an_unknown_kind_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match="luck.*pull_start"):
        reading_kinds.kind("luck")


def test_the_registry_cannot_be_changed() -> None:
    with pytest.raises(TypeError):
        reading_kinds.kinds()["luck"] = EVERY[0]  # type: ignore[index]
