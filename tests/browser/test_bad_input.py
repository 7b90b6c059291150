"""What should not have been typed or dropped, in a real browser: a plain message in its place, all else kept.

The many cases are tried in tests/pages and tests/unit; here are those in which the browser has a hand.
"""

from __future__ import annotations

import io
import wave
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.demo import pictures
from spoolwright.shop.questions.diary import diary
from tests.browser.bench_hand import READING_TAKES, BenchHand, carried
from tests.pages.diary.at_the_desk import arrived

SCRIPT = "<script>window.ran = 1</script><b onclick=x>Solbu"


def silence() -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(11025)
        file.writeframes(b"\x00\x00" * 22050)
    return out.getvalue()


SOUND = "The sound of the spool, or its ticks"
FILES = {
    "a photo called a recording": ("spin", SOUND, "spin.wav", pictures.cog()),
    "a silent recording": ("spin", SOUND, "silent.wav", silence()),
    "a photo called a table": ("pull", "Pull trace from the gauge", "pull.csv", pictures.cog()),
    "half a table": ("pull", "Pull trace from the gauge", "half.csv", b'time [s],pull [N]\n0.0,"1.0\n0.1'),
    "nothing at all": ("pull", "Pull trace from the gauge", "empty.csv", b""),
}
SAID = dict.fromkeys(FILES, "Accepted:") | {"nothing at all": "empty.csv: the file is empty"}
NO_MASS = {
    "12 mm": "is a length, not a mass. Accepted: a mass such as",
    "-286": "Accepted:",
    "1,2,3": "Accepted:",
    "heavy": "Accepted:",
}


@pytest.fixture
def hand(desk_page: Page, shop: Any, axe: Callable[[Page], None]) -> BenchHand:
    return BenchHand(desk_page, axe, "bad-input")


@pytest.mark.parametrize("case", FILES)
def test_a_file_that_is_not_what_it_is_called(
    hand: BenchHand, shop: Any, expect_trouble: Callable[[str], None], case: str
) -> None:
    expect_trouble("422")
    what, label, name, data = FILES[case]
    visit = arrived(shop.bench)
    hand.page.goto(f"/diary/1/write/{what}/")
    hand.fills({"Temperature at the bench": "18"})
    hand.next.get_by_label(label).set_input_files(carried(name, data))
    fault = hand.page.locator("#id_signal_error")
    expect(fault).to_be_visible(timeout=READING_TAKES)
    expect(fault).to_contain_text(SAID[case])
    expect(hand.next.get_by_label("Temperature at the bench")).to_have_value("18")
    hand.looks(case.replace(" ", "-"))
    assert not diary(visit.pk).of_kind("reading")


@pytest.mark.parametrize("typed", NO_MASS)
def test_what_is_no_mass_stays_in_its_field_with_a_message_beside_it(
    hand: BenchHand, shop: Any, expect_trouble: Callable[[str], None], typed: str
) -> None:
    expect_trouble("422")
    visit = arrived(shop.bench)
    hand.page.goto("/diary/1/reading/mass/")
    mass = hand.next.get_by_label("Mass", exact=True)
    mass.fill(typed)
    hand.checks("off the spool")
    hand.next.get_by_role("button", name="Write the reading").click()
    expect(hand.next.get_by_role("alert").first).to_contain_text(
        "Nothing was written. What was typed is kept."
    )
    expect(hand.page.locator(".field-error").first).to_contain_text(NO_MASS[typed])
    expect(mass).to_have_value(typed)
    expect(mass).to_have_attribute("aria-invalid", "true")
    expect(hand.next.get_by_label("off the spool")).to_be_checked()
    hand.axe(hand.page)
    assert not diary(visit.pk).of_kind("reading")


def test_a_script_in_a_name_is_a_name(hand: BenchHand) -> None:
    page = hand.page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill(SCRIPT)
    expect(page.locator("#known")).to_contain_text("A new customer will be written down")
    page.get_by_label("over the counter").check()
    page.get_by_label("What stands on it").fill("<img src=x onerror=window.ran=2>")
    page.get_by_label("What it does wrong").fill(
        "{{ 7|add:7 }} ${7*7} </textarea><script>window.ran=3</script>"
    )
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Number 1")
    expect(page.locator("main")).to_contain_text(SCRIPT)
    for address in ("/", "/diary/1/", "/reels/1/", "/customers/1/", "/visits/1/quote/", "/find/?q=solbu"):
        page.goto(address)
        expect(page.locator("main")).to_contain_text(SCRIPT)
        assert page.evaluate("window.ran") is None, address


def test_a_photo_of_200_mb_is_refused_and_the_arrival_is_still_there(
    hand: BenchHand, tmp_path: Path, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("413")
    large = tmp_path / "a whole day of video.mp4"
    with large.open("wb") as file:
        file.truncate(200 * 2**20)
    page = hand.page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("Peder Lien")
    page.get_by_label("What it does wrong").fill("wind knots")
    page.get_by_label("Photos").set_input_files(large)
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.get_by_role("alert")).to_contain_text("200 MB", timeout=60_000)
    page.goto("/arrival/")
    expect(page.get_by_label("Whose is it?")).to_have_value("Peder Lien")
    expect(page.get_by_label("What it does wrong")).to_have_value("wind knots")
