"""Does the book keep its word? 2,000 new proofs against their 90 % intervals, which narrow with proofs."""

from __future__ import annotations

import pytest

from spoolwright.judgement.book_trial import trial


@pytest.mark.parametrize("seed", [1, 2])
def test_ninety_per_cent_holds_of_two_thousand_new_proofs(seed: int) -> None:
    stages = trial(seed=seed)
    proofs, held = sum(stage.proofs for stage in stages), sum(stage.held for stage in stages)
    assert proofs == 2000
    assert 0.85 <= held / proofs <= 0.95
    assert all(0.83 <= stage.share <= 0.97 for stage in stages)


def test_the_interval_narrows_as_proofs_come_in() -> None:
    widths = [stage.width for stage in trial(shops=15, new=4)]
    assert widths == sorted(widths, reverse=True)
    assert widths[-1] < 0.6 * widths[0]


def test_nothing_to_try_is_refused() -> None:
    with pytest.raises(ValueError, match="1 or more"):
        trial(shops=0)
