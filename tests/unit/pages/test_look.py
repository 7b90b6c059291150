"""The colours of the paper and the slate, measured; the scripts and styles as they are served.

Contrast: WCAG 2.2, definitions "relative luminance" and "contrast ratio". From memory: black on white = 21:1,
and #767676, the usual example of the lightest grey that passes 4.5:1 on white, = 4.54:1.
"""

import re
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[3] / "src/spoolwright/pages/static/house"
PAPER = (HOUSE / "paper.css").read_text(encoding="utf-8")


def luminance(colour: str) -> float:
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def colours(selector: str) -> dict[str, str]:
    block = PAPER.split(selector + " {", 1)[1].split("}", 1)[0]
    return dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", block))


LOOKS = {
    "light": colours(":root"),
    "dark": colours(':root[data-look="dark"]'),
    "device": colours(':root[data-look="device"]'),
}


def test_the_measure_itself() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21, abs=0.01)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("look", LOOKS)
@pytest.mark.parametrize("ink", ["ink", "soft-ink", "live"])
@pytest.mark.parametrize("ground", ["paper", "field-paper"])
def test_all_writing_stands_at_seven_to_one(look: str, ink: str, ground: str) -> None:
    assert contrast(LOOKS[look][ink], LOOKS[look][ground]) >= 7


@pytest.mark.parametrize("look", LOOKS)
def test_words_on_the_ink_button_stand_at_seven_to_one(look: str) -> None:
    assert contrast(LOOKS[look]["on-live"], LOOKS[look]["live"]) >= 7


@pytest.mark.parametrize("look", LOOKS)
@pytest.mark.parametrize("ground", ["paper", "field-paper"])
def test_the_edge_of_a_field_stands_at_three_to_one(look: str, ground: str) -> None:
    assert contrast(LOOKS[look]["edge"], LOOKS[look][ground]) >= 3


def test_the_slate_is_the_same_whether_chosen_or_taken_from_the_device() -> None:
    assert LOOKS["dark"] == LOOKS["device"]


@pytest.mark.parametrize("sheet", sorted(HOUSE.glob("*.css")), ids=lambda path: path.name)
def test_no_shadows_gradients_or_round_corners(sheet: Path) -> None:
    text = sheet.read_text(encoding="utf-8")
    assert not re.search(r"gradient\(|text-shadow|box-shadow: (?!none)|border-radius: (?!0)", text)
    assert text.startswith("/*"), "each sheet begins with the list of its pieces"


@pytest.mark.parametrize("sheet", sorted(HOUSE.glob("*.css")), ids=lambda path: path.name)
def test_every_piece_in_the_list_at_the_top_is_drawn(sheet: Path) -> None:
    head, rules = sheet.read_text(encoding="utf-8").split("*/", 1)
    named = re.findall(r"^   \.([a-z][a-z-]+)", head, re.MULTILINE)
    assert not [name for name in named if f".{name}" not in rules]


@pytest.mark.parametrize("script", sorted(HOUSE.glob("*.js")), ids=lambda path: path.name)
def test_scripts_need_nothing_that_the_policy_forbids(script: Path) -> None:
    text = script.read_text(encoding="utf-8")
    assert not re.search(r"\beval\(|new Function|innerHTML|\.style\b|setAttribute\(\"style", text)


def test_pages_know_the_accent_of_the_papers() -> None:
    from spoolwright.papers.charts import ACCENT

    assert f'const ACCENT = "{ACCENT}";' in (HOUSE / "charts.js").read_text(encoding="utf-8")
    assert all(contrast(ACCENT, LOOKS[look]["paper"]) >= 3 for look in LOOKS)
