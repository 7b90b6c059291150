"""A pull typed as it goes: what few numbers can say, at the stated coverage, and what they cannot."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import live_pull, live_rows
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.unreadable import Unreadable
from spoolwright.demo import signals

KG = 9.80665
STEP = 0.01
TYPED = "0 0.0\n1.3 0.9\n2.5 2.90\n3.7 2.41\n4.9 2.35\n6.2 2.38\n7.4 2.36\n8.3 0"


def read(typed: str, gauge: Gauge | None = None, held: float | None = None) -> live_pull.LiveReading:
    return live_pull.analyse(live_rows.read(typed), gauge or Gauge(), held)


def test_the_highest_is_the_start_and_the_rest_the_running_pull() -> None:
    found = read(TYPED)
    assert found.start_up.value == pytest.approx(2.90 * KG)
    assert found.running.value == pytest.approx(np.mean([2.41, 2.35, 2.38, 2.36]) * KG)
    assert found.start_up_ratio.value == pytest.approx(2.90 / 2.375)
    assert (found.slip_start, found.slip_end, found.samples) == (2.5, 7.4, 4)


def test_it_says_what_it_cannot_say() -> None:
    told = " ".join(read(TYPED).notes)
    assert "8 numbers, 4 of them while the line ran" in told
    assert "judder and drift cannot" in told
    assert "one that was over before the display showed it stood higher" in told
    assert "accuracy was not given" in told
    assert "when it was let go" not in told
    assert "when the line was let go, are not counted" in told


def test_a_scale_that_holds_its_highest_says_more() -> None:
    seen, held = read(TYPED), read(TYPED, held=3.1 * KG)
    assert held.start_up.value == pytest.approx(3.1 * KG)
    assert held.start_up.uncertainty < 0.1 * seen.start_up.uncertainty
    assert "the highest that the scale held" in " ".join(held.notes)


def test_a_held_highest_below_a_typed_number_is_refused_in_the_units_that_were_typed() -> None:
    with pytest.raises(Unreadable, match=r"2\.80 kg\) is less than a number that was typed \(2\.90 kg"):
        read(TYPED, held=2.8 * KG)


def test_the_scatter_of_three_numbers_is_widened_as_the_guide_says() -> None:
    """JCGM 100:2008, table G.2, from memory: 95.45 % with two degrees of freedom takes 4.53 deviations."""
    found = read("0 2.9\n1 2.41\n2 2.35\n3 2.38")
    scatter = next(row for row in found.budget if row.result == "running" and row.way == "A")
    plain = np.std([2.41, 2.35, 2.38], ddof=1) * KG / np.sqrt(3)
    assert 2 * scatter.uncertainty == pytest.approx(4.53 * plain, rel=0.002)


def test_numbers_that_do_not_differ_leave_the_step_of_the_display() -> None:
    """JCGM 100:2008, F.2.2.1, from memory: a step's standard uncertainty is the step over root twelve."""
    found = read("0 2.9\n1 2.4\n2 2.4\n3 2.4")
    assert found.running.uncertainty == pytest.approx(0.1 * KG / np.sqrt(12))


def test_the_maker_s_step_counts_where_it_is_coarser_than_what_was_typed() -> None:
    found = read("0 2.90\n1 2.40\n2 2.40\n3 2.40", Gauge(resolution=0.05 * KG))
    assert found.running.uncertainty == pytest.approx(0.05 * KG / np.sqrt(12))


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("0 2.9\n1 2.4\n2 2.4", "after the start (2.90 kg) there are 2 numbers"),
        ("0 0\n1 0", "every number is nought"),
        ("0 0.5\n1 1\n2 1.6\n3 2.4\n4 3.2", "there are 0 numbers"),
    ],
)
def test_too_few_numbers_are_refused(typed: str, words: str) -> None:
    with pytest.raises(Unreadable) as refused:
        read(typed)
    assert words.lower() in refused.value.words.lower()


def test_a_pull_that_rises_as_it_runs_is_said() -> None:
    assert "the drag rose as it ran" in " ".join(read("0 2.4\n1 2.3\n2 2.38\n3 2.41").notes)


def typist(seed: int) -> tuple[str, signals.PullTruth]:
    """A slow pull by hand: a display that shows a number four times a second, and somebody who types it.

    The truth is the demo's drag; a look every 1.2 s, the highest of the start caught as the display had it.
    """
    rng = np.random.default_rng(seed)
    ratio = float(rng.uniform(1.0, 1.4))
    shape = signals.PullShape(
        running=float(rng.uniform(10, 40)), start_up_ratio=ratio, ramp=2.5, settling=0.3, slip=9.0,
        rate=100.0, noise=0.0, accuracy=0.0, resolution=STEP * KG,
    )  # fmt: skip
    pull = signals.pull_trace(shape, seed=seed)
    every = int(0.25 * shape.rate)
    shown_at, shown = pull.time[every - 1 :: every], pull.force[every - 1 :: every]
    starts = pull.truth.breaks_away
    near = (shown_at > starts - 0.5) & (shown_at < starts + 0.6)
    rows = [(starts + 0.5, shown[near].max())]
    for k in range(6):
        at = starts + 1.4 + 1.2 * k + rng.uniform(-0.2, 0.2)
        rows.append((at, shown[np.searchsorted(shown_at, at) - 1]))
    return "\n".join(f"{at:.2f} {force / KG:.2f}" for at, force in rows), pull.truth


def test_truth_in_truth_out_at_the_stated_coverage() -> None:
    """Of 120 pulls the interval k = 2 holds the truth in 95 of a hundred; a start is missed more rarely."""
    kept = {"start_up": 0, "running": 0, "start_up_ratio": 0}
    for seed in range(120):
        typed, truth = typist(seed)
        found = read(typed)
        for name in kept:
            measured = getattr(found, name)
            kept[name] += abs(measured.value - getattr(truth, name)) <= measured.expanded
    assert all(110 <= count <= 120 for count in kept.values()), kept
