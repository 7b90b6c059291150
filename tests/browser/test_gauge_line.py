"""A pull taken from a gauge on a line, in a real browser: shown as it comes, made into a file, drawn."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.demo import signals
from spoolwright.shop.errands import gauge_port
from tests.browser.bench_hand import READING_TAKES
from tests.fake_gauge import FakeGauge, plugged_in
from tests.pages.diary.at_the_desk import arrived


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"


@pytest.fixture
def gauge(monkeypatch: pytest.MonkeyPatch) -> Iterator[FakeGauge]:
    with plugged_in() as fake:
        monkeypatch.setattr(gauge_port, "ports", lambda: [fake.name])
        yield fake


def pulls(gauge: FakeGauge) -> None:
    """The demo's drag, forty numbers a second, as a gauge sends them."""
    pull = signals.pull_trace(signals.PullShape(rate=40.0, slip=1.2, start_up_ratio=1.4), seed=2)
    began = time.monotonic()
    for at, force in zip(pull.time, pull.force, strict=True):
        time.sleep(max(0.0, began + at - time.monotonic()))
        gauge.sends(b"%.2f kg\r\n" % (force / 9.80665))


def test_a_pull_is_heard_shown_drawn(
    new_page: Callable[..., Page], shop: Any, axe: Callable[..., None], gauge: FakeGauge
) -> None:
    visit = arrived(shop.bench)
    page = new_page("phone", shop.bench)
    page.goto(f"/diary/{visit.tag}/write/pull/")
    page.get_by_role("button", name="Take it from a gauge on a line").click()
    expect(page.get_by_label("The port")).to_have_value(gauge.name)
    axe(page, ".gauge-line")
    page.get_by_role("button", name="Listen", exact=True).click()
    expect(page.get_by_text("It listens", exact=True)).to_be_visible()
    hand = threading.Thread(target=pulls, args=[gauge])
    hand.start()
    expect(page.get_by_text("The highest so far")).to_be_visible()
    hand.join()
    page.wait_for_timeout(300)
    page.get_by_role("button", name="Stop, and draw it").click()
    expect(page.locator(".drawn [data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    expect(page.locator(".drawn")).to_contain_text("Running pull")
    expect(page.get_by_text("from the gauge 20")).to_be_visible()
    assert visit.entries.count() == 1
