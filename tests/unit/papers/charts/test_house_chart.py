"""What every chart shares: it is a plain dict, it can be drawn, and thinning loses no peak."""

import json
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.papers import charts
from spoolwright.papers.charts import house_chart
from tests.unit.papers import samples


def every_chart(width: int | None) -> dict[str, charts.Chart]:
    band = [samples.promised(k - 0.5, k, k + 0.5) for k in range(1, 7)]
    return {
        "pull": samples.pull_chart(width=width),
        "spin": charts.spin_down(samples.spin(), width=width),
        "turns": charts.drag_by_turns(
            [0, 1, 2, 3, 4, 5], band, [(2.0, samples.pull(3.1))], radius=0.0235, width=width
        ),
        "fill": charts.pull_by_fill([240, 200, 150, 100, 50, 10], band, [], width=width),
        "before": charts.before_after("pull", before=samples.pull(5.8), after=samples.pull(6.9), width=width),
    }


@pytest.mark.parametrize("name", every_chart(None))
def test_a_chart_is_plain_data_with_words_and_a_table(name: str) -> None:
    chart = every_chart(None)[name]
    assert json.loads(json.dumps(chart.spec)) == chart.spec
    assert chart.spec["width"] == "container"
    assert len(chart.description) > 20
    assert chart.says.endswith(".")
    assert chart.rows
    assert all(len(row) == len(chart.head) for row in chart.rows)


@pytest.mark.parametrize("name", every_chart(300))
def test_a_chart_can_be_drawn_for_a_paper(name: str) -> None:
    drawing = ET.fromstring(charts.to_svg(every_chart(300)[name].spec))
    assert drawing.tag.endswith("svg")
    assert "currentColor" in ET.tostring(drawing, encoding="unicode")


def test_the_same_chart_gives_the_same_drawing() -> None:
    spec = samples.pull_chart(width=300).spec
    assert charts.to_svg(spec) == charts.to_svg(spec)


def test_a_chart_for_a_page_gets_a_width_on_paper() -> None:
    width = float(ET.fromstring(charts.to_svg(samples.pull_chart().spec)).attrib["width"])
    assert width == pytest.approx(charts.PAPER_WIDTH, abs=12)


@given(st.lists(st.floats(-10, 100), min_size=1, max_size=400), st.integers(4, 60))
def test_thinning_keeps_the_greatest_and_the_least(values: list[float], most: int) -> None:
    points = house_chart.thinned(range(len(values)), values, most)
    kept = [value for _, value in points]
    assert len(points) <= max(most, 2)
    assert max(kept) == max(values)
    assert min(kept) == min(values)
    assert [t for t, _ in points] == sorted(t for t, _ in points)


def test_spacing_keeps_both_ends() -> None:
    assert house_chart.spaced(range(100), 5) == [0, 25, 50, 74, 99]
    assert house_chart.spaced([1, 2], 5) == [1, 2]


@pytest.mark.parametrize(("system", "unit"), [("metric", "kg"), ("imperial", "lb")])
def test_a_scale_speaks_the_readers_unit(system: str, unit: str) -> None:
    """1 lb is 0.45359237 kg exactly (international yard and pound agreement, from memory)."""
    scale = house_chart.scale("force", system, 50.0)
    assert scale.unit == unit
    assert scale(0.45359237 * 9.80665) == pytest.approx(0.45359237 if unit == "kg" else 1.0, abs=1e-6)
    assert scale.title("pull") == f"pull, {unit}"
