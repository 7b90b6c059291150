"""Four ways and their kin: truth in, truth out, at the stated coverage, and all agree."""

import numpy as np
import pytest

from spoolwright.bench import consistency, inertia
from spoolwright.bench.inertia_reading import GRAVITY
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.propagation import Known
from spoolwright.bench.swing import Swing, fit
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets import inertia_methods
from tests.unit.bench import spools

METHODS = tuple(inertia_methods.methods())
TRIALS = 150


def taken(method: str, chance: np.random.Generator | None = None) -> inertia.InertiaReading:
    """One reading of the known spool, its inputs off by chance as their uncertainties say."""
    true = spools.truth(method)
    if method in ("fall", "pin", "threads"):
        true["gravity"] = spools.G
    seen = {
        key: value + (chance.normal() * spools.spread(method, key) if chance else 0.0)
        for key, value in true.items()
    }
    return inertia._READERS[method](spools.inputs(method, seen), None)


@pytest.mark.parametrize("method", METHODS)
def test_truth_comes_out_where_nothing_is_off(method: str) -> None:
    found = taken(method)
    assert found.inertia.value == pytest.approx(spools.INERTIA, rel=1e-9)
    assert found.inertia.dimension == "inertia"
    if method == "fall":
        assert found.friction is not None
        assert found.friction.value == pytest.approx(spools.FRICTION, rel=1e-6)


@pytest.mark.parametrize("method", METHODS)
def test_the_stated_uncertainty_is_that_of_a_simulation(method: str) -> None:
    """JCGM 101:2008, 7, from memory: the formula, fed with draws of its inputs, scatters as is stated."""
    chance = np.random.default_rng(7)
    drawn = [taken(method, chance).inertia.value for _ in range(TRIALS)]
    stated = taken(method).inertia.uncertainty
    # The deviation of so many draws is itself known to one part in root 2(n - 1): three of those.
    assert float(np.std(drawn, ddof=1)) == pytest.approx(stated, rel=3 / np.sqrt(2 * (TRIALS - 1)) + 0.02)


@pytest.mark.parametrize("method", METHODS)
def test_twice_the_uncertainty_covers_the_truth_as_often_as_it_says(method: str) -> None:
    """JCGM 100:2008, G.1.3, from memory: k = 2 covers 95 %; of 150 seeded trials, within three deviations."""
    chance = np.random.default_rng(11)
    found = [taken(method, chance).inertia for _ in range(TRIALS)]
    covered = sum(abs(one.value - spools.INERTIA) <= one.expanded for one in found)
    assert TRIALS * 0.955 - 3 * np.sqrt(TRIALS * 0.955 * 0.045) <= covered


def test_all_ways_agree_and_their_mean_is_surer_than_each() -> None:
    chance = np.random.default_rng(5)
    agreed = 0
    for _ in range(40):
        results = [taken(method, chance).inertia for method in ("fall", "ring-fall", "threads", "sizes")]
        both = consistency.combine(results)
        agreed += both.agree
        if both.agree:
            assert both.mean.uncertainty < min(one.uncertainty for one in results)
    assert agreed >= 34  # 95 % of 40 are 38; less than 34 comes in one case of a thousand


def test_a_correlation_of_two_weights_from_one_scale_matters() -> None:
    seen = spools.inputs("fall", spools.truth("fall"))
    alone = inertia.read("fall", seen).inertia
    both = inertia.read("fall", seen, together={("mass_1", "mass_2"): 0.9}).inertia
    assert both.value == alone.value
    assert both.uncertainty != alone.uncertainty


def test_typed_inputs_go_all_the_way() -> None:
    for method in inertia_methods.methods().values():
        given = {one.key: inertia.known(one, one.example) for one in method.asks}
        found = inertia.read(method.id, given)
        assert 1e-6 < found.inertia.value < 1e-4, method.id
        assert 0 < found.inertia.uncertainty < 0.3 * found.inertia.value, method.id
        assert sum(
            row.uncertainty**2 for row in found.budget if row.result == "spool_inertia"
        ) == pytest.approx(found.inertia.uncertainty**2)


def test_a_time_by_hand_is_less_sure_than_one_from_a_video() -> None:
    time = inertia_methods.method("fall").asks[1]
    assert inertia.known(time, "1.60 s", by_hand=True).measured.uncertainty > 0.09
    assert inertia.known(time, "1.60 s").measured.uncertainty < 0.01


def test_gravity_is_known_only_so_well() -> None:
    assert GRAVITY.measured.uncertainty == pytest.approx((9.832 - 9.780) / 2 / 3**0.5, abs=2e-4)


def swung(inertia_of_all: float) -> Swing:
    t = np.arange(0, 6, 0.01)
    rate = np.sqrt(2.4e-3 / inertia_of_all - 0.3**2)
    return fit(t, np.exp(-0.3 * t) * np.sin(rate * t))


def test_a_record_stands_for_the_time_of_the_swings() -> None:
    asked = inertia_methods.method("spring").asks[0]
    found = inertia.read(
        "spring", {"stiffness": inertia.known(asked, "2.40 mN m/rad")}, swung(spools.INERTIA)
    )
    assert found.inertia.value == pytest.approx(spools.INERTIA, rel=1e-5)


def test_a_pendulum_takes_a_record_too_and_leaves_its_decay_out() -> None:
    seen = {key: one for key, one in spools.inputs("pin", spools.truth("pin")).items() if key != "period"}
    assert "decay" not in inertia.read("pin", seen, swung(spools.INERTIA)).inputs


@pytest.mark.parametrize(
    ("method", "change", "said"),
    [
        ("fall", {"time_2": 2.0}, "did not fall faster"),
        ("fall", {"time_2": 0.40}, "as fast as a free one"),
        ("fall", {"height": None}, "missing: height of the fall"),
        ("ring-fall", {"ring_inner": 0.05}, "inner side"),
        ("ring-coast", {"time_ring": 1.0}, "no longer than without"),
        ("ring-fall", {"radius": 0.05}, "below zero"),
        ("sizes", {"wall": 0.02}, "make no spool"),
    ],
)
def test_what_cannot_be_is_refused_in_words(method: str, change: dict[str, float | None], said: str) -> None:
    values = {**spools.truth(method), **change}
    kept = {key: value for key, value in values.items() if value is not None}
    with pytest.raises(Unreadable, match=said):
        inertia.read(method, spools.inputs(method, kept))


def test_a_swing_that_was_not_timed_is_missed() -> None:
    seen = spools.inputs("pin", {k: v for k, v in spools.truth("pin").items() if k != "period"})
    with pytest.raises(Unreadable, match="time of the swing is missing"):
        inertia.read("pin", seen)


def test_swings_nobody_counts_are_refused() -> None:
    with pytest.raises(Unreadable, match="1 to 1000"):
        inertia.known(inertia_methods.method("pin").asks[2], "4000")


def test_a_count_is_exact() -> None:
    count = inertia.known(inertia_methods.method("pin").asks[2], "20")
    assert count == Known("Swings that were timed", Measured(20.0, 0.0, "count"))


def test_an_instrument_of_the_shops_own_makes_the_uncertainty_of_what_it_measured() -> None:
    caliper = Instrument("caliper", "length", 1e-5, limit=3e-5)
    _, arbor, *_ = inertia_methods.method("sizes").asks
    taken = inertia.known(arbor, "25.0 mm", instrument=caliper)
    # Limits as a rectangle, JCGM 100:2008, 4.3.7, from memory; the typed digit is coarser than the display.
    assert taken.measured.uncertainty == pytest.approx(np.hypot(1e-4 / np.sqrt(12), 3e-5 / np.sqrt(3)))
    assert taken.measured.value == pytest.approx(25e-3)
    mass = inertia_methods.method("sizes").asks[0]
    assert inertia.known(mass, "18.4 g", instrument=caliper) == inertia.known(mass, "18.4 g")


@pytest.mark.parametrize(("limit", "thumb"), [(None, True), (0.05, True), (0.2, False)])
def test_a_stopwatch_whose_limit_holds_the_thumb_is_not_charged_for_it_twice(
    limit: float | None, thumb: bool
) -> None:
    watch = Instrument("stopwatch", "time", 0.01, limit=limit)
    taken = inertia.known(inertia_methods.method("fall").asks[1], "1.60 s", by_hand=True, instrument=watch)
    assert any("by hand" in source for source, _, _ in taken.parts) is thumb
    assert taken.measured.uncertainty >= inertia.BY_HAND
