"""The pull trace: labels where they belong, in the reader's units."""

import json

import pytest

from spoolwright.papers import charts
from spoolwright.papers.charts import pull_chart
from tests.unit.papers import samples


def labels(chart: charts.Chart) -> list[str]:
    layers = chart.spec["layer"]
    return [it["mark"]["text"] for it in layers if it["mark"]["type"] == "text"]


def shown(start: float, run: float, promise: object = None) -> charts.Pull:
    times, forces = samples.trace(start, run)
    return charts.Pull(times, forces, 1.5, 7.0, samples.pull(start), samples.pull(run, 0.04), promise)  # type: ignore[arg-type]


def test_every_part_is_named_on_the_chart() -> None:
    assert labels(samples.pull_chart()) == [
        "promised 6.2 to 7.6 kg",
        "slip begins",
        "slip ends",
        "running 2.600 kg ± 0.080 kg",
        "start-up 3.90 kg ± 0.10 kg",
    ]


def test_without_a_promise_there_is_no_band() -> None:
    chart = charts.pull_trace(shown(3.9, 2.6))
    assert "rect" not in json.dumps(chart.spec)
    assert "promised" not in chart.description


@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_axis_and_labels_agree_on_the_unit(system: str) -> None:
    chart = samples.pull_chart(system=system)
    unit = {"metric": "kg", "imperial": "lb"}[system]
    assert chart.spec["layer"][0]["encoding"]["y"]["axis"]["title"] == f"pull, {unit}"
    assert all(unit in label for label in labels(chart) if "±" in label)
    assert all(row[1].endswith(unit) for row in chart.rows)


@pytest.mark.parametrize(
    ("start", "run", "words"), [(2.7, 2.6, "smoothly"), (3.1, 2.6, "holds a little"), (3.9, 2.6, "sticks")]
)
def test_the_sentence_follows_the_ratio(start: float, run: float, words: str) -> None:
    assert words in charts.pull_trace(shown(start, run)).says


@pytest.mark.parametrize(
    "promise", [None, (2.4, 2.6, 2.8), (2.8, 3.0, 3.2), (6.0, 7.0, 8.0), (1.0, 1.2, 1.4)]
)
def test_the_two_pulls_are_never_written_over_one_another(promise: tuple[float, float, float] | None) -> None:
    band = samples.promised(*promise) if promise else None
    layers = charts.pull_trace(shown(2.65, 2.6, band)).spec["layer"]
    running, start = (
        next(it for it in layers if str(it["mark"].get("text", "")).startswith(word))
        for word in ("running", "start-up")
    )
    top = running["encoding"]["y"]["scale"]["domain"][1]
    apart = (start["data"]["values"][0]["y"] - running["data"]["values"][0]["y"]) / top * pull_chart.HEIGHT
    line_below = running["mark"]["baseline"] == "top"
    assert apart > (0 if line_below else 12)
