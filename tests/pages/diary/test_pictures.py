"""Signals as pictures: the chart, the small line, the rows behind an uncertainty."""

from __future__ import annotations

from dataclasses import fields

from spoolwright.bench import pull_trace, spin_down, ticks
from spoolwright.bench.budget import Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.demo import signals
from spoolwright.pages.diary.told import pictures
from spoolwright.shop.questions.signals import KeptPull, KeptSpin, kept_pull, kept_spin


def pull() -> KeptPull:
    trace = pull_trace.read(signals.pull_trace(seed=2).to_csv())
    return kept_pull(trace, pull_trace.analyse(trace, Gauge(accuracy_of_reading=0.005)))


def spin() -> KeptSpin:
    signal = signals.spin_recording(signals.SpinShape(initial_speed=90.0, constant=6.0), seed=3)
    return kept_spin(spin_down.fit(ticks.mend(ticks.read_csv(signal.to_csv()))))


def test_every_result_of_the_bench_has_its_name_in_the_budget() -> None:
    results = {row.result for row in (*pull().budget, *spin().budget)}
    assert results <= set(pictures.RESULTS)


def test_rows_that_weigh_nothing_are_left_out() -> None:
    rows = [
        Contribution("running", "scatter while slipping", "A", 0.1),
        Contribution("running", "zero", "B", 0.0),
    ]
    shown = pictures.budget_rows(rows, "metric")
    assert [(row.result, row.way) for row in shown] == [("running pull", "from scatter")]
    assert shown[0].amount.replace("\u00a0", " ").endswith(" g")


def test_without_an_inertia_the_drags_are_no_torques() -> None:
    rows = [Contribution("constant", "scatter of the ticks", "A", 0.1)]
    assert "rad/s" in pictures.budget_rows(rows, "metric", per_inertia=True)[0].amount
    assert "N" in pictures.budget_rows(rows, "metric")[0].amount


def test_the_small_lines_say_what_they_are() -> None:
    assert "100 readings a second" in pictures.small_pull(pull()).words
    assert pictures.small_pull(pull()).level == pull().running.value
    assert "mended" in pictures.small_spin(spin()).words


def test_the_charts_are_those_of_the_papers() -> None:
    assert pictures.chart_of(pull(), "imperial").rows[0][1].endswith(("lb", "oz"))
    assert pictures.chart_of(spin(), "metric").head == ("time", "measured", "fit", "tick")
    assert {f.name for f in fields(pictures.SmallLine)} == {"times", "heights", "words", "level"}
