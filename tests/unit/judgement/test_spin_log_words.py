"""The sentences of a spin log."""

from __future__ import annotations

from spoolwright.bench.spin_log import Spin, analyse
from spoolwright.judgement.spin_log_words import in_words
from tests.unit.bench.test_spin_log import one_each


def test_it_says_which_differences_are_shown_and_which_may_be_chance() -> None:
    far = " ".join(in_words(analyse(one_each(1, (0.0, 0.0, 3.0)))))
    assert "Shown (2 of 3 pairs)" in far
    assert "may be chance" in far
    assert "No difference between two kinds is shown (3 looked at)" in " ".join(
        in_words(analyse(one_each(4)))
    )


def test_turning_over_and_the_basis_are_said() -> None:
    spins = [
        Spin(kind, reel, side, base * (1.02 if side == "1" else 1.0) * (1 + 0.01 * k))
        for kind, base in (("a", 10.0), ("b", 20.0))
        for reel in ("r", "s")
        for side in "01"
        for k, _ in enumerate("xyz")
    ]
    spins[0] = Spin("a", "r", "0", 11.0)
    told = " ".join(in_words(analyse(spins)))
    assert "Turned over" in told
    assert "other reels" in told
