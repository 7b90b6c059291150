"""Kinds of bearing compared: against scipy, against known truth, and honest where little is known."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from spoolwright.bench.spin_log import Spin, analyse
from spoolwright.bench.unreadable import Unreadable


def one_each(seed: int, shifts=(0.0, 0.0, 0.0), reels: int = 5, spread: float = 0.2) -> list[Spin]:
    rng = np.random.default_rng(seed)
    return [
        Spin(f"kind {k}", f"{k}.{reel}", "", float(np.exp(3 + shift + rng.normal(0, spread))))
        for k, shift in enumerate(shifts)
        for reel in range(reels)
    ]


def test_one_spin_a_reel_is_scipys_analysis_of_variance_and_tukeys_test() -> None:
    spins = one_each(1, (0.0, 0.3, 0.5))
    groups = [[np.log(s.time) for s in spins if s.kind == f"kind {k}"] for k in range(3)]
    found = analyse(spins)
    f = stats.f_oneway(*groups)
    assert (found.fisher, found.chance) == pytest.approx((f.statistic, f.pvalue))
    tukey = stats.tukey_hsd(*groups)
    within = tukey.confidence_interval(0.95)
    for pair in found.pairs:
        a, b = int(pair.longer[-1]), int(pair.shorter[-1])
        assert pair.chance == pytest.approx(tukey.pvalue[a, b], abs=1e-6)
        assert np.log([pair.low, pair.high]) == pytest.approx([within.low[a, b], within.high[a, b]], abs=1e-5)


def test_spins_of_one_reel_are_not_taken_for_reels() -> None:
    many = [
        Spin(s.kind, s.unit, "", s.time * float(f))
        for s in one_each(2, (0.0, 0.2), reels=3)
        for f in (0.99, 1.0, 1.01, 1.0)
    ]
    one, all_spins = analyse(one_each(2, (0.0, 0.2), reels=3)), analyse(many)
    assert all_spins.freedom == one.freedom == 4
    assert all_spins.chance == pytest.approx(one.chance, rel=0.05)
    assert [part.name for part in all_spins.parts] == ["from reel to reel", "from spin to spin"]


def test_scatter_is_parted_by_its_cause() -> None:
    rng, spins = np.random.default_rng(3), []
    for kind in ("a", "b"):
        for reel in range(30):
            level = 3 + rng.normal(0, 0.3)
            for side in "01":
                at = level + rng.normal(0, 0.1)
                spins += [
                    Spin(kind, f"{kind}{reel}", side, float(np.exp(at + rng.normal(0, 0.05))))
                    for _ in range(3)
                ]
    parts = {part.name: part.deviation for part in analyse(spins).parts}
    assert parts["from reel to reel"] == pytest.approx(0.3, rel=0.25)
    assert parts["after turning over"] == pytest.approx(0.1, rel=0.25)
    assert parts["from spin to spin"] == pytest.approx(0.05, rel=0.15)


def test_one_reel_a_kind_speaks_of_these_bearings_only() -> None:
    spins = [Spin(k, k, "", t) for k, t in (("a", 9.0), ("a", 10.0), ("b", 30.0), ("b", 33.0))]
    assert analyse(spins).basis == "spins"
    assert analyse(spins).turned_over is None


@pytest.mark.parametrize(
    ("spins", "words"),
    [
        ([Spin("a", "1", "", 0.0)], "cannot be"),
        ([Spin("a", "1", "", 9.0), Spin("a", "2", "", 8.0)], "1 kind"),
        ([], "no kind"),
        ([Spin("a", "1", "", 9.0), Spin("b", "2", "", 8.0)], "no scatter"),
    ],
)
def test_what_says_nothing_is_refused(spins: list[Spin], words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        analyse(spins)
