"""What a paper shows of every kind of signal; nothing where nothing was kept."""

from __future__ import annotations

import re
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from spoolwright.pages.gathered import told_signals
from spoolwright.papers import charts
from spoolwright.shop import records
from tests.pages import pier_reel
from tests.shop import walk
from tests.shop.records.test_kept_inertia import FELL, KEPT
from tests.shop.records.test_kept_noise import KEPT as HEARD
from tests.shop.records.test_kept_series import kept as pulled

WITHOUT_PICTURE = {"by hand"}


def of(data: dict[str, Any]) -> told_signals.ToldSignal:
    return told_signals.told(SimpleNamespace(analysis=data), "metric")


def test_every_signal_that_is_kept_is_told() -> None:
    """A new kind of signal says its name in its record, and needs its line here."""
    folder = Path(next(iter(records.__path__)))
    named = {
        name
        for path in folder.glob("*.py")
        for name in re.findall(r'^ +"signal": "([a-z ]+)",$', path.read_text(encoding="utf-8"), re.MULTILINE)
    }
    assert named >= {"pull", "spin", "inertia"}
    assert named - WITHOUT_PICTURE == set(told_signals.TELLERS)


def test_a_pull_has_its_trace(hand: Any) -> None:
    reading = pier_reel.pull(hand, walk.arrived(hand), 2.7, 1.07).reading
    (chart,) = told_signals.told(reading, "metric").pictures
    assert chart.description.startswith("Pull trace")


def test_a_swing_has_its_record_and_what_it_is_set_beside() -> None:
    told = of(KEPT.as_data())
    swing, beside = told.pictures
    assert swing.description.startswith("A swing of")
    assert beside.description.startswith("moment of inertia")
    assert told.inputs[0][0] == "Stiffness of the spring in twist"


def test_a_fall_has_no_record() -> None:
    assert len(of(FELL.as_data()).pictures) == 1


def test_a_noise_has_its_spectrum_its_verdict_and_its_evidence() -> None:
    told = of(HEARD.as_data())
    assert charts.to_svg(told.pictures[0].spec)
    assert told.said[0].startswith("Outer ring damaged. Grade of the evidence")
    assert "Lines stand." in told.said


def test_a_series_has_its_pulls_and_its_words() -> None:
    told = of(pulled().as_data())
    assert charts.to_svg(told.pictures[0].spec)
    assert told.said == ("One.", "Two.")


@pytest.mark.parametrize("data", [{}, {"signal": "song"}])
def test_what_was_typed_has_nothing(data: dict[str, Any]) -> None:
    assert of(data) == told_signals.NOTHING
