"""The spectrum of a noise: the named rates stand in it, the found one in the accent."""

import json

from spoolwright.papers import charts
from spoolwright.papers.charts import Noise
from spoolwright.papers.ink import ACCENT

NAMED = (("outer ring", 107.3), ("inner ring", 162.1), ("ball", 141.1), ("cage", 11.9), ("each turn", 29.9))


def noise(**changed: object) -> Noise:
    frequencies = tuple(0.5 * k for k in range(4, 1600))
    swelling = tuple(0.8 if abs(f % 107.5) < 0.3 else 0.03 for f in frequencies)
    given = {"found": "outer ring", "verdict": "outer", "unit": "Hz", "named": NAMED} | changed
    return Noise(frequencies=frequencies, swelling=swelling, low=500.0, high=5700.0, **given)  # type: ignore[arg-type]


def test_each_part_is_named_and_the_found_one_stands_in_the_accent() -> None:
    text = json.dumps(charts.noise_lines(noise()).spec)
    for name, _ in NAMED:
        assert name in text
    assert text.count(ACCENT) > 1
    assert ACCENT not in json.dumps(charts.noise_lines(noise(found="", verdict="sound")).spec["layer"][:5])


def test_the_table_has_the_height_at_each_rate() -> None:
    chart = charts.noise_lines(noise())
    assert chart.rows[0] == ("outer ring", "107.3 Hz", "80.0 %")
    assert ("inner ring", "162.1 Hz", "3.00 %") in chart.rows


def test_it_says_what_knocks_or_that_nothing_does() -> None:
    assert "rate of the outer ring" in charts.noise_lines(noise()).says
    assert "would knock" in charts.noise_lines(noise(found="", verdict="sound")).says
    assert "Verdict: outer" in charts.noise_lines(noise()).description


def test_close_multiples_are_ruled_but_not_named() -> None:
    layers = charts.noise_lines(noise(named=(("inner ring", 162.1), ("cage", 11.9)))).spec["layer"]
    words = [layer["mark"].get("text", "") for layer in layers]
    assert words.count("× 2") == 1


def test_a_coast_is_drawn_by_the_turn() -> None:
    by_turn = noise(unit="times a turn", named=(("outer ring", 3.58),))
    assert "how often in a turn" in json.dumps(charts.noise_lines(by_turn).spec)


def test_silence_is_drawn_too() -> None:
    flat = Noise((1.0, 2.0), (0.0, 0.0), (), "Hz", 500.0, 5700.0, "cannot tell")
    assert charts.to_svg(charts.noise_lines(flat).spec).startswith("<svg")
