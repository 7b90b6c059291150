"""Line as it is sold: classes in kilograms and pounds, diameters in millimetres and inches, the drag rule."""

from __future__ import annotations

import pytest

from spoolwright import quantities
from spoolwright.judgement.line_check import HIGHEST_SHARE, LOWEST_SHARE

POUND = quantities.read("1 lb", "force")


@pytest.mark.parametrize(
    ("kilograms", "pounds"),
    [
        *((1, 2.2), (2, 4.4), (4, 8.81), (6, 13.22), (8, 17.63)),
        *((10, 22.04), (15, 33.06), (24, 52.91), (37, 81.57), (60, 132.27)),
    ],
)
def test_line_classes_of_the_game_fishing_table(kilograms: int, pounds: float) -> None:
    """A writer's table of association classes (opened: bishfish.co.nz), cut off after two figures."""
    assert quantities.read(f"{kilograms} kg", "force") / POUND == pytest.approx(pounds, abs=0.011)


@pytest.mark.parametrize(
    ("millimetres", "printed"), [(0.47, 0.19), (0.66, 0.066 / 0.0254), (0.74, 0.074 / 0.0254)]
)
def test_three_slips_of_a_diameter_chart_are_not_repeated(millimetres: float, printed: float) -> None:
    """A chart (opened: norrik.com) has 0.47 mm as 0.19 in and writes 0.066 and 0.074 mm for 0.66 and 0.74."""
    inches = quantities.read(f"{millimetres} mm", "length") / quantities.read("1 in", "length")
    assert abs(inches / printed - 1) > 0.5
    assert inches == pytest.approx(millimetres / 25.4, rel=1e-12)


@pytest.mark.parametrize(
    ("strength", "share", "pounds"),
    [(20, LOWEST_SHARE, 5.0), (20, HIGHEST_SHARE, 6.7), (100, LOWEST_SHARE, 25.0)],
)
def test_the_drag_is_set_to_a_quarter_to_a_third_of_the_line(
    strength: int, share: float, pounds: float
) -> None:
    """Guides (opened): rhyzomecorp.co.kr for the 20 lb line, fishtrack.com for 100 lb braid."""
    assert strength * share == pytest.approx(pounds, abs=0.11)
