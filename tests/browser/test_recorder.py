"""Recording in the page: a microphone that plays a file, one that is refused, none that may be asked for."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Browser, Page, expect

from spoolwright.demo import signals
from spoolwright.mechanics import coastdown
from tests.browser.bench_hand import READING_TAKES
from tests.browser.conftest import QUIET
from tests.browser.find import find
from tests.pages.diary.at_the_desk import arrived

SHAPE = signals.SpinShape(
    initial_speed=90.0, constant=30.0, viscous=0.05, missed=0.0, doubled=0.0, rate=48_000
)
FAKE = ("--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream")
AT_ONCE = "field => { field.dataset.countsDown = '0'; }"
INSECURE = "Object.defineProperty(window, 'isSecureContext', { value: false })"
REFUSED = """navigator.mediaDevices.getUserMedia = () =>
    Promise.reject(new DOMException('Permission denied', 'NotAllowedError'))"""


class Late(signals.SpinSignal):
    """A little of the room before the spool turns, so that the recording has begun by then."""

    def samples(self) -> Any:
        sound = super().samples()
        room = sound[-int(0.45 * self.shape.rate) :]
        return np.concatenate((room, room[::-1], sound))


def spun() -> Late:
    made = signals.spin_recording(SHAPE, seed=3)
    return Late(made.ticks, made.loudness, made.length, made.shape, made.truth, made.seed)


@pytest.fixture(scope="module")
def browser(browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Browser]:
    """A browser of its own, whose microphone hears a spool run down once and then nothing."""
    heard = tmp_path_factory.mktemp("microphone") / "ticks.wav"
    heard.write_bytes(spun().to_wav())
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    flags = [*QUIET, *FAKE, f"--use-file-for-fake-audio-capture={heard}%noloop"]
    flags += ["--no-sandbox"] if as_root else []
    ours = browser.browser_type.launch(executable_path=find(), args=flags)
    yield ours
    ours.close()


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"


def at_the_spin(page: Page, shop: Any) -> Any:
    visit = arrived(shop.bench)
    page.goto(f"/diary/{visit.tag}/write/spin/")
    page.get_by_label("The sound of the spool, or its ticks").evaluate(AT_ONCE)
    return visit


def test_a_spin_is_heard_replayed_drawn_and_written(
    new_page: Callable[..., Page], shop: Any, axe: Callable[..., None]
) -> None:
    page = new_page("phone", shop.bench, permissions=["microphone"])
    visit = at_the_spin(page, shop)
    page.get_by_role("button", name="Record it here").click()
    expect(page.get_by_role("timer")).to_contain_text("s left")
    expect(page.get_by_role("meter", name="How loud it is")).to_be_visible()
    page.wait_for_timeout(4600)
    page.get_by_role("button", name="Stop", exact=True).click()
    expect(page.get_by_label("What was recorded")).to_be_visible()
    expect(page.get_by_text("The loudest of it is")).to_be_visible()
    axe(page, ".recorder")
    page.get_by_role("button", name="Use this recording").click()
    drawn = page.get_by_role("region", name="What the file says; not yet written")
    expect(drawn.locator("[data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    page.get_by_label("off the spool").check()
    page.get_by_role("group", name="Cast brakes").get_by_label("off", exact=True).check()
    page.get_by_label("Temperature at the bench").fill("19")
    page.get_by_role("button", name="Write the reading").click()
    expect(page.locator(".entry .trace-way")).to_be_visible(timeout=READING_TAKES)
    is_true(visit)


def is_true(visit: Any) -> None:
    """What was written is what the simulated spool did, within the stated uncertainty (k = 2)."""
    from spoolwright.shop.questions.readings import results

    found = {value.kind: value for value in results(visit.pk)}
    kept = next(iter(found.values())).reading
    assert kept.attachment.original_name.startswith("recorded ")
    assert kept.attachment.original_name.endswith(".webm")
    first, stop = found["spin_initial_speed"], found["stop_time"]
    assert (
        abs(first.value_si - SHAPE.initial_speed)
        < 2 * first.standard_uncertainty_si + 0.02 * SHAPE.initial_speed
    )
    drags = (SHAPE.constant, SHAPE.viscous, SHAPE.quadratic)
    shortest, longest = (
        float(coastdown.stop_time(first.value_si + sign * 2 * first.standard_uncertainty_si, 1.0, *drags))
        for sign in (-1, 1)
    )
    assert (
        shortest - 2 * stop.standard_uncertainty_si
        < stop.value_si
        < longest + 2 * stop.standard_uncertainty_si
    )


def test_a_microphone_that_is_refused_leaves_words_and_the_upload(
    new_page: Callable[..., Page], shop: Any
) -> None:
    page = new_page("desk", shop.bench)
    page.add_init_script(REFUSED)
    at_the_spin(page, shop)
    page.get_by_role("button", name="Record it here").click()
    expect(page.get_by_role("alert")).to_contain_text("The microphone was refused to this page.")
    expect(page.get_by_role("button", name="Record it here")).to_be_visible()
    expect(page.get_by_label("The sound of the spool, or its ticks")).to_be_enabled()


def test_an_address_that_may_not_listen_says_which_may(new_page: Callable[..., Page], shop: Any) -> None:
    page = new_page("phone", shop.bench)
    page.add_init_script(INSECURE)
    at_the_spin(page, shop)
    expect(page.get_by_text("python3 run.py --share gives the phone one")).to_be_visible()
    expect(page.get_by_role("button", name="Record it here")).to_have_count(0)
    expect(page.get_by_label("The sound of the spool, or its ticks")).to_be_enabled()
