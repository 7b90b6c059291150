"""Acceptance: with a phone, a scale and calipers alone a reel is read, mended, proved, and the book moves.

The reel is the pier reel of the trade handbook, chapter 9 (invented); the spool in the microphone is
simulated, so that its speed is known. Everything that is heard, measured and mended goes through the forms on
a phone, as does the proof. By acts go: the parcel, the caliper and the phone on the list of instruments, the
question to the customer and the answer. What the forms ask beside this is other tests' business.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.send_quote import OfferedPromise
from tests.browser.bench_hand import READING_TAKES, BenchHand
from tests.browser.test_live_pull import press
from tests.browser.test_recorder import AT_ONCE, browser, is_true  # noqa: F401  (browser is a fixture)
from tests.pages.diary.at_the_desk import arrived
from tests.shop import walk

PULL = {
    "Radius where the line leaves": "23.5",
    "Turns of the star from free": "1",
    "Temperature at the bench": "18",
}
SPOOL = {
    "Mass of the spool as it turns": "18.4",
    "Diameter of the bare arbor": "25.0",
    "Diameter of the flanges": "49.0",
    "Between the flanges": "24.5",
    "Thickness of arbor and flanges": "1.2",
}
"""The example of the table of methods, in the units that stand beside the fields."""


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"


def test_a_reel_is_read_mended_and_proved_and_the_book_moves(
    new_page: Callable[..., Page], shop: Any, axe: Callable[..., None]
) -> None:
    visit = arrived(shop.bench)
    walk.caliper(shop.bench)
    known = Known("The bench phone", 0.001, share=0.0001)
    add_instrument(hand=shop.bench, mark="P1", kind="phone", known=known, dimension="time")
    hand = BenchHand(new_page("phone", shop.bench, permissions=["microphone"]), axe, "phone-alone")
    listen(hand, visit)
    weigh_and_size_the_spool(hand)
    thumb_a_pull(hand, ("0", "4.1", "2.72", "2.61", "2.68"))
    pull_at_three_settings(hand)
    measure_a_disc(hand)
    believed = look_at_the_book(hand, "none so far")
    agree(shop.bench, visit)
    mend(hand)
    thumb_a_pull(hand, ("0", "2.75", "2.58", "2.55", "2.6"))
    prove(hand)
    assert look_at_the_book(hand, "3 results so far") != believed
    hand.page.get_by_role("link", name="Start-up ratio of woven carbon").click()
    expect(hand.page.locator("main [data-chart] svg").first).to_be_visible()
    hand.looks("coefficient")


def listen(hand: BenchHand, visit: Any) -> None:
    """The spool is heard by the phone, in the page."""
    page = hand.page
    page.goto(f"/diary/{visit.tag}/write/spin/")
    page.get_by_label("The sound of the spool, or its ticks").evaluate(AT_ONCE)
    page.get_by_role("button", name="Record it here").click()
    page.wait_for_timeout(4600)
    page.get_by_role("button", name="Stop", exact=True).click()
    page.get_by_role("button", name="Use this recording").click()
    drawn = page.get_by_role("region", name="What the file says; not yet written")
    expect(drawn.locator("[data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    hand.next.get_by_label("Taken with").select_option("P1")
    hand.checks("off the spool")
    page.get_by_role("group", name="Cast brakes").get_by_label("off", exact=True).check()
    hand.fills({"Temperature at the bench": "18"})
    hand.writes("Write the reading")
    is_true(visit)
    expect(hand.last).to_contain_text("With: phone P1")


def weigh_and_size_the_spool(hand: BenchHand) -> None:
    """A letter scale's grams and the caliper's millimetres, and the moment of inertia that they come to."""
    hand.page.goto("/diary/1/write/inertia/?method=sizes")
    hand.next.get_by_label("Taken with").select_option("C1")
    hand.fills(SPOOL)
    hand.next.get_by_role("button", name="Work it out", exact=True).click()
    drawn = hand.next.get_by_role("region", name="What this comes to; not yet written")
    expect(drawn).to_contain_text("The reel’s sheet says", timeout=READING_TAKES)
    hand.fits("inertia")
    hand.writes("Write the reading")
    expect(hand.last).to_contain_text("Moment of inertia of the spool")
    expect(hand.last).to_contain_text("With: caliper C1")


def pull_at_three_settings(hand: BenchHand) -> None:
    """What the hanging scale showed at each turn of the star, row by row."""
    hand.page.goto("/diary/1/write/series/")
    for number, pull in enumerate((("1", "0.98", "0.92"), ("2", "1.92", "1.81"), ("3", "2.86", "2.70")), 1):
        row = hand.next.get_by_role("group", name=f"Pull {number}", exact=True)
        for label, shown in zip(("turns", "start-up", "running"), pull, strict=True):
            row.get_by_label(label, exact=True).fill(shown)
    hand.checks("on the spool")
    hand.fills({label: PULL[label] for label in ("Radius where the line leaves", "Temperature at the bench")})
    hand.next.get_by_role("button", name="Draw it", exact=True).click()
    drawn = hand.next.get_by_role("region", name="What the pulls say; not yet written")
    expect(drawn.locator("[data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    hand.fits("series")
    hand.writes("Write the series")
    expect(hand.last).to_contain_text("Pull that one turn adds")


def thumb_a_pull(hand: BenchHand, shown: tuple[str, ...]) -> None:
    """What a hanging scale shows, typed with the thumb while the line runs."""
    page = hand.page
    page.goto("/diary/1/write/live/")
    page.get_by_role("button", name="Start", exact=True).click()
    for number in shown:
        press(page, number)
        page.wait_for_timeout(320)  # the start is over after 0.3 s
    page.get_by_role("button", name="Stop, and draw it").click()
    expect(page.locator(".drawn [data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    hand.checks("on the spool")
    hand.fills(PULL)
    hand.writes("Write the reading")
    expect(hand.last).to_contain_text("Start-up ratio")


def measure_a_disc(hand: BenchHand) -> None:
    """The size when new and the limit stand beside it, and the answer says how sure it is."""
    hand.page.goto("/diary/1/write/hand/?guide=disc-thickness")
    expect(hand.next).to_contain_text("0.8 mm new, by the sheet")
    hand.next.get_by_label("Taken with").select_option("C1")
    hand.next.get_by_label(re.compile("^.*thickness", re.IGNORECASE)).first.fill("0.65")
    hand.looks("disc")
    hand.writes("Write the reading")
    expect(hand.last).to_contain_text("Too close to call")
    expect(hand.last).to_contain_text("With: The long caliper (C1)")


def look_at_the_book(hand: BenchHand, proofs: str) -> str:
    """Every line of the book as it is believed now."""
    hand.page.goto("/book/")
    expect(hand.page.locator("main")).to_contain_text(f"its own proofs: {proofs}")
    hand.looks(f"book-{proofs.replace(' ', '-')}")
    return "".join(hand.page.locator(".coefficients").all_inner_texts())


def agree(bench: Any, visit: Any) -> None:
    """The question and the answer are other tests' business, and stand in the ink at once."""
    calm = OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio")
    run = OfferedPromise("pull_run", "force", low=2.0 * walk.G, high=3.2 * walk.G, reading_kind="pull_run")
    walk.answered(bench, walk.quoted(bench, visit, walk.option(promises=(calm, run))))


def mend(hand: BenchHand) -> None:
    hand.page.goto("/diary/1/write/work/")
    hand.next.get_by_text("something else; only what was agreed may be billed").click()
    hand.next.locator("#id_done_carbon-drag-set").check()
    hand.fills({"Minutes it took": "74"})
    hand.checks("counted: every part that came off is back, replaced or accounted for")
    hand.writes("Write the work")
    expect(hand.last).to_contain_text("Carbon drag set, greased")


def prove(hand: BenchHand) -> None:
    page = hand.page
    page.goto("/visits/1/proof/")
    expect(page.locator("main")).to_contain_text("chance")
    for tried in page.get_by_role("group", name="Tried by hand, and in order").get_by_role("checkbox").all():
        tried.check()
    hand.looks("proof")
    page.get_by_role("button", name="Write the proof").click()
    expect(page.get_by_role("link", name="The proof on paper")).to_be_visible()
