"""The same reel on days that do not go by themselves: more is found than was agreed, two write at once, the
line is lost while somebody types, the hands are on the keyboard and nowhere else.

Sums: trade handbook, chapter 9, scenario 1 (a yes to 1,104 kr, capped at 1,200; a bill above it is refused).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from playwright.sync_api import Locator, Page, expect

from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.diary import diary
from tests.browser import the_line
from tests.browser.bench_hand import BenchHand
from tests.pages.diary.at_the_desk import arrived
from tests.shop import walk

DIARY = re.compile(r"/diary/1/$")
BOTH_AT_ONCE = """(block, names) => names.forEach(name =>
    [...block.querySelectorAll('a')].find(one => one.textContent === name).click())"""
NO_LINE = ("ERR_INTERNET_DISCONNECTED", "htmx:afterRequest", "htmx:sendError")


def test_a_bill_above_the_cap_is_refused_and_asked_for_anew(
    desk_page: Page, shop: Any, axe: Callable[[Page], None], expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    visit = arrived(shop.bench)
    walk.answered(shop.bench, walk.quoted(shop.bench, visit))
    walk.worked(shop.bench, visit)
    hand = BenchHand(desk_page, axe, "above-the-cap")
    hand.page.goto("/diary/1/write/invoice/")
    add_line(hand, "Spool, turned true", "265")
    hand.next.get_by_role("button", name="Write the invoice").click()
    refusal = hand.next.get_by_role("alert").first
    expect(refusal).to_contain_text(
        re.compile(r"1,369\.00\s+kr is 169\.00\s+kr over the cap of 1,200\.00\s+kr")
    )
    expect(last_line(hand).get_by_label("Sum")).to_have_value(re.compile("^265"))
    hand.looks("refused")
    assert not diary(visit.pk).of_kind("invoice")

    ask_for_more(hand)
    hand.next.get_by_label(re.compile("^Found since")).check()
    hand.fills({"The exact words": "all right, up to 1,400 then", "Up to what sum": "1400"})
    hand.writes("Write the answer")
    held = agreed(visit.pk)
    assert [answer.exact_words for answer in held.answers] == [
        "yes, up to 1,200",
        "all right, up to 1,400 then",
    ]
    hand.page.goto("/diary/1/write/invoice/")
    expect(hand.next.get_by_role("region", name="What it comes to")).to_contain_text("1,369.00")
    hand.writes("Write the invoice")
    expect(hand.last).to_contain_text("1,369.00")


def last_line(hand: BenchHand) -> Locator:
    """The first line of the bill below the five that were quoted."""
    return hand.next.get_by_role("group", name="Line 6")


def add_line(hand: BenchHand, what: str, amount: str) -> None:
    last_line(hand).get_by_label("What for").fill(what)
    last_line(hand).get_by_label("Sum").fill(amount)
    hand.fills({"Why the bill is more": "The spool was bent, seen when it was open."})


def ask_for_more(hand: BenchHand) -> None:
    """The way that the refusal offers: a question besides, with the old answer kept."""
    page = hand.page
    hand.next.get_by_role("link", name="ask the customer for more").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("A question besides")
    expect(page.locator("main")).to_contain_text("yes, up to 1,200")
    page.get_by_text("A line besides: line, a part").click()
    page.get_by_label("A line besides").fill("Spool, turned true")
    page.get_by_label("Its sum").first.fill("265")
    page.get_by_label("Its sum").first.press("Tab")
    expect(page.get_by_role("region", name="Found since")).to_contain_text("1,369.00")
    page.get_by_role("region", name="Found since").get_by_label("Offer this one").check()
    hand.looks("asked-anew")
    page.get_by_role("button", name="Ask the customer").click()
    page.get_by_role("link", name="Write the answer").click()


def test_two_write_in_one_diary_at_once_and_both_keep_what_they_wrote(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None]
) -> None:
    """Both forms are filled before either is sent, and both buttons are pressed before either is answered."""
    visit = arrived(shop.bench)
    hands = {who: BenchHand(new_page(size, who), axe, "at-once") for who, size in sizes(shop).items()}
    for who, hand in hands.items():
        hand.page.goto("/diary/1/write/word/")
        hand.fills({"In your own words": f"{who.shown} was here"})
    for hand in hands.values():
        hand.next.get_by_role("button", name="Write it").click(no_wait_after=True)
    for who, hand in hands.items():
        expect(hand.page.locator(".entry").filter(has_text=f"{who.shown} was here")).to_be_visible()
    assert sorted(block.entry.words for block in diary(visit.pk).of_kind("word")) == [
        "Ingjerd Vannes was here",
        "Torbal Kvie was here",
    ]
    later = next(hand for hand in hands.values() if hand.page.get_by_text("while you were writing").count())
    expect(later.page.locator(".entry").filter(has_text=" was here")).to_have_count(2)
    later.looks("second-sees-the-first")


def sizes(shop: Any) -> dict[Any, str]:
    return {shop.owner: "desk", shop.bench: "phone"}


def test_who_chooses_faster_than_the_house_answers_gets_what_was_chosen_last(
    desk_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    for words in ("htmx:afterRequest", "htmx:sendAbort"):
        expect_trouble(words)
    arrived(shop.bench)
    desk_page.goto("/diary/1/write/reading/?all=1")
    block = desk_page.locator("#next")
    desk_page.wait_for_load_state("networkidle")
    block.evaluate(BOTH_AT_ONCE, ["a reading", "Spool end-float"])
    expect(block.locator("h2")).to_have_text("Spool end-float")
    expect(desk_page).to_have_url(re.compile("/diary/1/reading/end_float/"))


def test_the_line_is_lost_while_somebody_types_and_nothing_is(
    phone_page: Page, shop: Any, axe: Callable[[Page], None], expect_trouble: Callable[[str], None]
) -> None:
    for words in NO_LINE:
        expect_trouble(words)
    visit = arrived(shop.bench)
    hand = BenchHand(phone_page, axe, "no-line")
    hand.page.goto("/diary/1/reading/pull_full/")
    hand.next.get_by_label("Pull with the drag hard on").fill("5.8")
    the_line.lose(hand.page)
    hand.next.get_by_label("second try").fill("5.9")
    hand.checks("on the spool")
    hand.fills({"Radius where the line leaves": "23.5", "Temperature at the bench": "18"})
    hand.next.get_by_role("button", name="Write the reading").click()
    expect(hand.page.locator(".kept-words")).to_contain_text("Not sent")
    hand.looks("not-sent")
    the_line.find_again(hand.page)
    hand.page.reload()
    expect(hand.page.locator(".kept-words")).to_contain_text("was kept and is back in its place")
    for label, value in (("Pull with the drag hard on", "5.8"), ("second try", "5.9")):
        expect(hand.next.get_by_label(label, exact=True)).to_have_value(value)
    expect(hand.next.get_by_label("on the spool")).to_be_checked()
    hand.writes("Write the reading")
    assert len(diary(visit.pk).of_kind("reading")) == 1


def test_one_entry_by_the_keyboard_alone(desk_page: Page, shop: Any, axe: Callable[[Page], None]) -> None:
    """From the bench to a written reading with keys only: no pointer, and no focus set from outside."""
    arrived(shop.bench)
    page, keys = desk_page, desk_page.keyboard
    page.goto("/")
    tab_to(page, "Tarvak 58R")
    keys.press("Enter")
    expect(page).to_have_url(DIARY)
    page.wait_for_load_state("networkidle")  # the keys are heard once the page's scripts are there
    keys.press("w")
    tab_to(page, "spool end-float")
    keys.press("Enter")
    expect(page.locator("#next h2")).to_have_text("Spool end-float")
    page.wait_for_load_state("networkidle")
    tab_to(page, "Spool end-float")
    keys.type("0.42")
    expect(page.locator("#next input:focus")).to_have_value("0.42")
    keys.press("Tab")
    keys.type("0.43")
    expect(page.locator("#next input:focus")).to_have_value("0.43")
    tab_to(page, "Write the reading")
    keys.press("Enter")
    hand = BenchHand(page, axe, "by-keyboard")
    expect(hand.entries.filter(has_text="Spool end-float")).to_contain_text("0.425")
    hand.looks("written")


def tab_to(page: Page, words: str) -> None:
    """Press Tab until what has the focus is called so; each stop on the way has to be visible."""
    named = "one => (one.labels?.[0] || one).innerText?.trim() || one.getAttribute('aria-label') || ''"
    for _ in range(90):
        page.keyboard.press("Tab")
        here = page.evaluate_handle("document.activeElement").as_element()
        assert here, "the focus went nowhere"
        if words in here.evaluate(named):
            assert here.is_visible(), f"{words} takes the focus and cannot be seen"
            return
    raise AssertionError(f"Tab never came to “{words}”")
