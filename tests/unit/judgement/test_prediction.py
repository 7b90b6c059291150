"""Predictions carry an interval, their conditions and what they rest on; and the interval is honest."""

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_train
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.reel_state import as_found
from spoolwright.judgement.taken import Taken
from spoolwright.quantities import DIMENSIONS
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
FULL = Taken("pull_full", Measured(57.0, 1.0, "force"), {"radius": 0.0235})


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_every_value_has_an_interval_and_reasons(slug: str) -> None:
    prediction = predict(reel_sheet.load(slug), {}, samples=500)
    wanted = {"pull_full_spool", "pull_half_spool", "pull_near_empty", "drag_torque", "pull_per_star_turn",
              "start_up_ratio", "spin_time", "end_float", "line_capacity", "line_per_turn"}  # fmt: skip
    assert wanted - set(prediction.why_not) <= set(prediction.values)
    assert not set(prediction.why_not) & set(prediction.values)
    for value in prediction.values.values():
        assert value.low <= value.middle <= value.high
        assert value.deviation > 0
        assert value.dimension in DIMENSIONS
        assert value.rests_on
        assert value.quantity


def test_a_lever_has_a_pull_at_its_strike_stop_and_rows_for_its_way() -> None:
    lever = predict(reel_sheet.load("pellmar-30-2"), {}, samples=500)
    full, strike = lever.values["pull_full_spool"].middle, lever.values["pull_at_strike"].middle
    assert 0 < strike < full
    assert [row.turns for row in lever.star_turns] == pytest.approx([k / 10 for k in range(11)])
    assert lever.star_turns[-1].pull.middle == pytest.approx(full)
    assert lever.limited_by.startswith("The way of the lever first")
    assert "star" not in " ".join((lever.limited_by, *lever.star_turns[3].pull.rests_on))
    slow, fast = lever.values["line_per_turn_low"].middle, lever.values["line_per_turn"].middle
    assert slow / fast == pytest.approx((39 / 26) / (50 / 15))


def test_what_has_no_meaning_says_why_instead_of_a_number() -> None:
    still = predict(reel_sheet.load("lumvik-4000"), {}, samples=500)
    assert "stands still in the cast" in still.why_not["spin_time"]
    fly = predict(reel_sheet.load("brekkas-9-10"), {}, samples=500)
    assert set(fly.why_not) == {"spin_time", "end_float", "handle_torque"}
    assert fly.values["line_per_turn"].middle == pytest.approx(2 * np.pi * 0.045, rel=0.01)


def test_the_table_runs_from_free_to_full_and_never_falls() -> None:
    table = predict(SHEET, {}, samples=500).star_turns
    assert (table[0].turns, table[-1].turns) == (0.0, 5.0)
    assert table[0].pull.middle == 0.0
    assert np.all(np.diff([row.pull.middle for row in table]) >= 0)


def test_a_reading_narrows_the_prediction_and_is_named_in_it() -> None:
    blind = predict(SHEET, {"mass": Measured(0.3, 0.001, "mass")}).values["pull_full_spool"]
    seen = predict(SHEET, {"pull_full": FULL}).values["pull_full_spool"]
    assert seen.high - seen.low < 0.5 * (blind.high - blind.low)
    assert any("your full pull reading of 5.81 kg" in why for why in seen.rests_on)


def test_works_are_named_in_what_they_move() -> None:
    values = predict(SHEET, {"pull_full": FULL}, ["carbon-drag-set"], samples=500).values
    assert any("carbon drag set" in why for why in values["pull_full_spool"].rests_on)
    assert not any("carbon drag set" in why for why in values["spin_time"].rests_on)


def test_the_same_seed_gives_the_same_prediction() -> None:
    first, again, other = (predict(SHEET, {"pull_full": FULL}, samples=300, seed=s) for s in (1, 1, 2))
    assert first.values == again.values
    assert first.values["pull_full_spool"] != other.values["pull_full_spool"]


def test_what_is_known_can_be_shared_between_sets_of_works() -> None:
    readings = {"pull_full": FULL}
    known = know(SHEET, readings, samples=300, seed=1)
    shared = predict(SHEET, readings, ["carbon-drag-set"], known=known)
    alone = predict(SHEET, readings, ["carbon-drag-set"], samples=300, seed=1)
    assert shared.values == alone.values


def test_a_measured_start_speed_is_kept_for_the_spin_after() -> None:
    readings = {
        "spin_initial_speed": Measured(250.0, 2.0, "rotation"),
        "stop_time": Measured(20.0, 0.5, "time"),
    }
    spin = predict(SHEET, readings, samples=300).values["spin_time"]
    assert spin.conditions["initial_speed"] == 250.0
    assert spin.low < 20.0 < spin.high


def test_a_measured_line_goes_before_the_example() -> None:
    thin = predict(SHEET, {"line_diameter": Measured(0.28e-3, 5e-6, "length")}, samples=500)
    assert (
        thin.values["line_capacity"].middle
        > 1.8 * predict(SHEET, {}, samples=500).values["line_capacity"].middle
    )


def test_a_stack_put_together_wrongly_pulls_less_and_says_so() -> None:
    drag = SHEET.drag
    assert drag is not None
    swapped = list(drag.stack)
    eared = next(i for i, washer in enumerate(swapped) if washer.name == "inner eared disc")
    swapped[eared] = swapped[eared].model_copy(update={"turns_with": "shaft"})
    wrong = SHEET.model_copy(update={"drag": drag.model_copy(update={"stack": tuple(swapped)})})
    right = predict(SHEET, {}, samples=500)
    told = predict(wrong, {}, samples=500)
    assert told.values["pull_full_spool"].middle < 0.7 * right.values["pull_full_spool"].middle
    assert told.warnings


def test_a_reel_without_a_drag_is_predicted_without_one() -> None:
    bare = predict(SHEET.model_copy(update={"drag": None}), {}, samples=300)
    assert "pull_full_spool" not in bare.values
    assert bare.star_turns == ()
    assert "spin_time" in bare.values


def test_words_come_in_the_readers_units() -> None:
    told = predict(SHEET, {"pull_full": FULL}, samples=300, system="imperial")
    assert any("12.81 lb" in why for why in told.values["pull_full_spool"].rests_on)


@pytest.mark.parametrize(("works", "named"), [(["gild-it"], "gild-it"), (["strip-and-wash"], "samples")])
def test_what_cannot_be_is_refused_by_name(works: list[str], named: str) -> None:
    with pytest.raises(ValueError, match=named):
        predict(SHEET, {}, works, samples=10 if named == "samples" else 500)


def test_intervals_hold_the_truth_about_as_often_as_they_say() -> None:
    """Reels drawn from what the house believes, read with noise: nine pulls in ten must lie in theirs."""
    drag = SHEET.drag
    assert drag is not None
    truth = know(SHEET, {"mass": Measured(0.3, 0.001, "mass")}, samples=100, seed=11)
    clamp, _ = drag_train.greatest_clamp(drag, truth.draws, truth.draws["spring_force"])
    full = drag_train.spool_torque(SHEET, as_found(SHEET), truth.draws, clamp) / 0.0235
    half_clamp = drag_train.clamp_at(drag, 2.5, truth.draws, truth.draws["spring_force"])
    half = drag_train.spool_torque(SHEET, as_found(SHEET), truth.draws, half_clamp) / 0.0235
    noise = np.random.default_rng(5)
    held = 0
    for i in range(60):
        read = float(half[i] * (1 + 0.03 * noise.standard_normal()) + 0.4 * noise.standard_normal())
        taken = Taken("pull_run", Measured(read, 0.4, "force"), {"radius": 0.0235, "star_turns": 2.5})
        pull = predict(SHEET, {"pull_run": taken}, samples=1000, seed=i).values["pull_full_spool"]
        held += pull.low <= full[i] <= pull.high
    # 60 trials at 0.90: fewer than 48 would be a surprise of one in three hundred (binomial).
    assert held >= 48
