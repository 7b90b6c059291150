"""The trace as a mark: small, its own SVG, in the ink around it."""

import xml.etree.ElementTree as ET

import pytest

from spoolwright.papers.charts import trace_mark
from spoolwright.papers.charts.sparkline import HEIGHT, MOST_POINTS, WIDTH
from tests.unit.papers import samples


def points(svg: str) -> list[tuple[float, float]]:
    line = ET.fromstring(svg).find("{http://www.w3.org/2000/svg}polyline")
    assert line is not None
    return [tuple(map(float, pair.split(","))) for pair in line.attrib["points"].split()]  # type: ignore[misc]


def test_it_is_thinned_and_stays_in_its_box() -> None:
    drawn = points(trace_mark(*samples.trace()))
    assert len(drawn) <= MOST_POINTS
    assert all(0 <= x <= WIDTH and 0 <= y <= HEIGHT for x, y in drawn)


def test_the_peak_is_the_highest_point() -> None:
    times, forces = samples.trace()
    drawn = points(trace_mark(times, forces))
    peak = times[max(range(len(forces)), key=forces.__getitem__)] / times[-1] * WIDTH
    assert min(drawn, key=lambda p: p[1])[0] == pytest.approx(peak, abs=1)


def test_it_carries_no_style_and_no_markup_from_its_title() -> None:
    svg = trace_mark([0, 1, 2], [0, 1, 0], title='"><script>')
    assert "style=" not in svg
    assert "<script" not in svg
    assert "currentColor" in svg


@pytest.mark.parametrize(("times", "forces"), [([0], [1]), ([0, 1], [1]), ([1, 1], [1, 2]), ([2, 1], [1, 2])])
def test_what_is_no_trace_is_refused(times: list[float], forces: list[float]) -> None:
    with pytest.raises(ValueError, match="trace"):
        trace_mark(times, forces)


def test_a_trace_of_nothing_is_a_flat_line() -> None:
    assert {y for _, y in points(trace_mark([0, 1, 2], [0, 0, 0]))} == {HEIGHT - 1.0}
