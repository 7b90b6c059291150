"""A gauge on a line, heard by the page: its ports, numbers as they come, what is refused, how it ends."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary import gauge_line
from spoolwright.shop.errands import gauge_port
from tests.fake_gauge import FakeGauge, plugged_in
from tests.pages.diary.at_the_desk import arrived, way

pytestmark = pytest.mark.django_db
ADDRESS = "/diary/gauge/"


@pytest.fixture
def gauge(monkeypatch: pytest.MonkeyPatch) -> Iterator[FakeGauge]:
    with plugged_in() as fake:
        monkeypatch.setattr(gauge_port, "ports", lambda: [fake.name])
        monkeypatch.setattr(gauge_line, "LONGEST", 0.6)
        yield fake


def heard(answer: Any) -> list[dict[str, Any]]:
    assert answer.status_code == 200
    return [json.loads(line) for line in b"".join(answer.streaming_content).splitlines()]


def test_it_says_which_ports_there_are_and_how_a_gauge_usually_talks(bench: Client, gauge: FakeGauge) -> None:
    told = bench.get(ADDRESS).json()
    assert told["ports"] == [gauge.name]
    assert 'unit = "kg"' in told["like"]


def test_numbers_come_as_they_are_and_it_ends_by_itself(
    bench: Client, gauge: FakeGauge, monkeypatch: pytest.MonkeyPatch
) -> None:
    gauge.speaks_when_opened(monkeypatch, b"1.00\nERR\n2.35\n")
    told = heard(bench.post(ADDRESS, {"port": gauge.name, "like": 'unit = "kg"'}))
    numbers = [row for row in told if "n" in row]
    assert [row["s"].replace("\u00a0", " ") for row in numbers] == ["1.00 kg", "2.35 kg"]
    assert numbers[1]["n"] == pytest.approx(2.35 * 9.80665, abs=1e-3)
    assert told[-1] == {"end": "It stopped by itself after 0.6 s.", "left_out": 1}
    assert bench.get(ADDRESS).json()["like"] == 'unit = "kg"', "remembered for the next pull"


def test_unplugged_it_ends_in_words_after_what_came(
    bench: Client, gauge: FakeGauge, monkeypatch: pytest.MonkeyPatch
) -> None:
    gauge.speaks_when_opened(monkeypatch, b"1.00\n2.00\n", unplugged=0.3)
    told = heard(bench.post(ADDRESS, {"port": gauge.name, "like": 'unit = "kg"'}))
    assert len([row for row in told if "n" in row]) == 2
    assert told[-1]["end"] == gauge_port.UNPLUGGED


def test_the_port_is_free_again_when_the_hand_walks_away(bench: Client, gauge: FakeGauge) -> None:
    answer = bench.post(ADDRESS, {"port": gauge.name, "like": 'unit = "kg"'})
    stream = iter(answer.streaming_content)  # type: ignore[attr-defined]
    next(stream)
    answer.close()
    gauge_port.open_port(gauge.name, gauge_line.gauge_protocol.GaugeProtocol()).close()


@pytest.mark.parametrize(
    ("sent", "words"),
    [
        ({"like": "baud = 9601"}, "“9601” cannot be. Accepted: 1200"),
        ({"like": "speed = 1"}, "nothing that is known of a gauge"),
        ({"port": "/etc/passwd"}, "That port is not there any more"),
        ({"port": ""}, "That port is not there any more"),
    ],
)
def test_what_cannot_be_is_refused_in_words(
    bench: Client, gauge: FakeGauge, sent: dict[str, str], words: str
) -> None:
    answer = bench.post(ADDRESS, {"port": gauge.name, "like": "", **sent})
    assert answer.status_code == 422
    assert words in answer.json()["end"]


def test_a_port_that_somebody_else_listens_to_is_said(bench: Client, gauge: FakeGauge) -> None:
    with gauge_port.open_port(gauge.name, gauge_line.gauge_protocol.GaugeProtocol()):
        answer = bench.post(ADDRESS, {"port": gauge.name, "like": ""})
    assert answer.status_code == 422
    assert "held by another program" in answer.json()["end"]


def test_the_field_of_a_pull_trace_offers_it(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert f'data-gauge="{ADDRESS}"' in bench.get(way(visit, "pull")).content.decode()
    assert "data-gauge" not in bench.get(way(visit, "spin")).content.decode()
