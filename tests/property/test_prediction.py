"""Whatever is asked of a prediction, it stays a prediction: ordered ends, a rising star, a right inverse."""

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.proof import Promise, chance_outside, decide
from spoolwright.judgement.quote_options import three_options
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.star_turns import star_turn_for
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEETS = {slug: reel_sheet.load(slug) for slug in reel_sheet.shipped()}
slugs = st.sampled_from(sorted(SHEETS))
works = st.lists(
    st.sampled_from([w.id for w in all_works().values() if "round multiplier" in w.kinds]), max_size=6
)
readings = st.fixed_dictionaries(
    {},
    optional={
        "pull_full": st.floats(5, 200).map(lambda v: Taken("pull_full", Measured(v, 0.02 * v, "force"))),
        "start_up_ratio": st.floats(1.0, 2.5).map(lambda v: Measured(v, 0.03, "ratio")),
        "spin_time": st.floats(0.5, 120).map(
            lambda v: Taken("spin_time", Measured(v, 0.3, "time"), {"line": "off"})
        ),
        "end_float": st.floats(0, 1e-3).map(lambda v: Measured(v, 1e-5, "length")),
    },
)


@settings(max_examples=25, deadline=None)
@given(slugs, readings, works)
def test_ends_are_ordered_and_finite_and_the_star_never_takes_drag_away(slug, taken, chosen) -> None:
    kind = SHEETS[slug].reel.kind
    prediction = predict(
        SHEETS[slug], taken, [w for w in chosen if kind in all_works()[w].kinds], samples=200
    )
    for value in prediction.values.values():
        assert np.isfinite([value.low, value.middle, value.high, value.deviation]).all()
        assert 0 <= value.low <= value.middle <= value.high
    middles = [row.pull.middle for row in prediction.star_turns]
    assert all(later >= earlier for earlier, later in zip(middles, middles[1:], strict=False))


@settings(max_examples=25, deadline=None)
@given(slugs, st.floats(0.01, 1.0))
def test_the_turn_told_is_the_inverse_of_the_table(slug, share) -> None:
    prediction = predict(SHEETS[slug], {}, samples=200)
    turns = [row.turns for row in prediction.star_turns]
    middles = [row.pull.middle for row in prediction.star_turns]
    target = share * middles[-1]
    advice = star_turn_for(prediction, target)
    assert advice.turns is not None
    assert np.isclose(np.interp(advice.turns, turns, middles), target)


@settings(max_examples=15, deadline=None)
@given(slugs, readings)
def test_options_add_up_and_never_hold_a_work_beside_its_better(slug, taken) -> None:
    for option in three_options(SHEETS[slug], taken, [], starting_rates(), samples=200):
        ids = {work.id for work in option.works}
        assert not ids & {name for work in option.works for name in work.instead_of}
        assert option.low_minor <= option.total_minor <= option.high_minor
        assert option.total_minor == option.priced.net_minor + option.priced.tax_minor


@given(
    st.floats(-1e3, 1e3),
    st.floats(1e-3, 1e2),
    st.floats(-1e3, 1e3),
    st.floats(0, 1e3),
    st.sampled_from([1.0, 1.645, 2.0]),
)
def test_a_wrong_pass_is_never_likelier_than_the_rule_allows(value, spread, low, width, guard) -> None:
    promised, measured = Promise(low, low + width, "ratio"), Measured(value, spread, "ratio")
    told = decide(promised, measured, guard_factor=guard)
    # Outside on either side by the guard or more: each tail is at most that of the guard factor.
    tail = {1.0: 0.1587, 1.645: 0.0500, 2.0: 0.0228}[guard]
    if told.kind == "shown":
        assert chance_outside(promised, measured) <= 2 * tail + 1e-3
    if told.kind == "failed":
        assert chance_outside(promised, measured) >= 1 - tail - 1e-3
