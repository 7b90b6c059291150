"""The accent can be told from paper by day and by night."""

import pytest

from spoolwright.papers.ink import ACCENT


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2 (definition of relative luminance, from memory)."""
    parts = [int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@pytest.mark.parametrize("ground", ["#ffffff", "#f7f2e7", "#1e2327"])
def test_the_accent_stands_out_by_three_to_one(ground: str) -> None:
    """WCAG 2.2, 1.4.11: parts of graphics need 3 : 1 (from memory)."""
    dark, light = sorted((luminance(ACCENT), luminance(ground)))
    assert (light + 0.05) / (dark + 0.05) >= 3
