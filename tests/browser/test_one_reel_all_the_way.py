"""Acceptance: one reel from its parcel to its proof, its invoice and the post, as a newcomer does it by hand.

Real files are chosen and let fall, in a real browser, on a phone in dark and at a desk in light. The reel and
its numbers are those of the trade handbook, chapter 9, scenario 1 (worked out there from marked inputs): 3.9
and 2.6 kg, 0.599 N m, 1,104 kr, the ceiling of 1,269.60, the cap of 1,200, 1,169 with 233.80 of tax, 969 due.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.demo import measuring, pictures
from spoolwright.demo.scenarios import pier_reel
from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from tests.browser.bench_hand import BenchHand, carried

LIGHT = {"desk": "light", "phone": "dark"}
OTHER = {"light": "dark", "dark": "light"}
ABOUT = {
    "3.9": r"3\.(8[5-9]|9[0-4])",
    "2.6": r"2\.(5[5-9]|6[0-4])",
    "1.50": r"1\.(49|50)",
    "1.07": r"1\.0[678]",
}
"""The handbook's roundings of what a trace then reads more finely."""
WHY_MORE = "The idler cog was split, shown to you by picture."


@pytest.fixture(scope="session")
def files() -> dict[str, Any]:
    """What the gauge, the recorder and the camera give for this reel, before the work and after it."""
    before, after = pier_reel.BEFORE, pier_reel.AFTER
    pulls = [measuring.pull_that_reads(it, seed).data for it, seed in ((before, 101), (after, 103))]
    spin = measuring.spin(before, 102, None, "spin.wav").data
    return {
        "pull before": carried("half drag.csv", pulls[0], "text/csv"),
        "pull after": carried("half drag, after.csv", pulls[1], "text/csv"),
        "spin": carried("spin.wav", spin, "audio/wav"),
        "pawl": carried("pawl.png", pictures.pawl(worn=True), "image/png"),
        "cog": carried("cog.png", pictures.cog(24, 0.7), "image/png"),
    }


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_one_reel_all_the_way(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], files: dict[str, Any], size: str
) -> None:
    judged = axe if size == "desk" else unjudged  # each form by thumb goes through the rules in test_diary
    hand = BenchHand(new_page(size, color_scheme=LIGHT[size]), judged, f"way-{size}")
    sign_in_once(hand, shop)
    put_the_sheet_on_the_shelf(hand)
    write_the_arrival(hand, files)
    measure_before(hand, files, falls=size == "desk")
    write_the_finding(hand, files)
    ask_the_customer(hand)
    write_the_answer(hand)
    find_the_cog(hand, files)
    write_the_work(hand)
    measure_after(hand, files)
    prove(hand)
    sign(BenchHand(new_page(size, shop.bench), judged, f"way-{size}-second"))
    bill(hand)
    send_home(hand)
    look_at_the_passport(hand)
    look_again_in_the_other_light(hand, OTHER[LIGHT[size]])


def unjudged(page: Page, where: str = "") -> None:
    """The page as it is: only its width is looked at."""


def sign_in_once(hand: BenchHand, shop: Any) -> None:
    hand.page.goto(f"/sign-in/{make_sign_in_link(hand=None, person=shop.owner)}/")
    hand.looks("01-door")
    hand.page.locator("main").get_by_role("button").click()
    expect(hand.page.get_by_role("heading", name="On the bench")).to_be_visible()


def put_the_sheet_on_the_shelf(hand: BenchHand) -> None:
    hand.page.get_by_role("link", name="Sheets").click()
    hand.page.get_by_role("link", name="Tarvak 58R").click()
    hand.page.get_by_role("button", name="Write version 1").click()
    expect(hand.page.get_by_role("heading", level=1)).to_contain_text("Tarvak 58R")
    hand.looks("02-sheet")


def write_the_arrival(hand: BenchHand, files: dict[str, Any]) -> None:
    page = hand.page
    page.get_by_role("link", name="Arrival").click()
    page.get_by_label("Whose is it?").fill("Ragna Solbu")
    expect(page.locator("#known")).to_contain_text("A new customer will be written down")
    page.get_by_text("Telephone, e-mail and address").click()
    page.get_by_label("Address").fill("Moloveien 3, Langværet")
    page.get_by_label("Mass of the closed parcel").fill("742")
    page.get_by_label("Carrier").fill("Havnepost")
    page.get_by_role("button", name="one more: line").click()
    page.get_by_label("Its reel sheet").select_option(label="Tarvak 58R")
    page.get_by_label("Serial, or a mark to know it by").fill("58R-20417")
    page.get_by_label("right hand").check()
    page.get_by_label("What it does wrong").fill("The level wind catches at the right end.")
    page.get_by_label("salt", exact=True).check()
    page.get_by_label("Mass of the reel").fill("338")
    page.get_by_label("with its line").check()
    page.get_by_label("Line on it").select_option(label="nylon")
    page.get_by_label("Thickness of the line").fill("0.40")
    page.get_by_label("Photos").set_input_files(files["pawl"])
    hand.looks("03-arrival")
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Number 1")
    hand.looks("04-numbers")
    tag = hand.paper(page.get_by_role("link", name="Print its bag tag"))
    assert "Tarvak 58R" in tag
    assert "Ragna Solbu" in tag
    page.get_by_role("link", name="Open its diary").click()
    expect(hand.entries).to_have_count(1)


def measure_before(hand: BenchHand, files: dict[str, Any], *, falls: bool) -> None:
    """The mass that is asked for first, the pull as a file, the rest typed, the spin as a recording."""
    expect(hand.next.locator("h2")).to_have_text("Next: mass")
    hand.fills({"Mass": "286"})
    hand.checks("off the spool")
    hand.writes("Write the reading")
    hand.opens("the pull", "A pull trace")
    (hand.lets_fall if falls else hand.chooses)("Pull trace from the gauge", files["pull before"])
    expect(hand.entries).to_have_count(2)
    fill_conditions_of_the_pull(hand)
    hand.looks_at_the_form("05-pull")
    hand.writes("Write the reading")
    for words in (rf"Start-up pull\s+{ABOUT['3.9']}", rf"Running pull\s+{ABOUT['2.6']}", r"0\.599\s+N\sm"):
        expect(hand.last).to_contain_text(re.compile(words))
    expect(hand.last).to_contain_text(re.compile(rf"Start-up ratio\s+{ABOUT['1.50']}"))
    hand.types("Pull with the drag hard on", "5.8", "5.8", "5.8")
    hand.types("Spool end-float", "0.42")
    hand.types("Feel of the handle", checks=["3: rough"])
    hand.types("Free-spin time", "11", "11", "11", checks=["off the spool", "off"])
    hand.opens("a spin-down", "A spin-down")
    hand.chooses("The sound of the spool, or its ticks", files["spin"])
    hand.checks("off the spool", "off")
    hand.looks_at_the_form("06-spin")
    hand.writes("Write the reading")


def fill_conditions_of_the_pull(hand: BenchHand) -> None:
    hand.checks("part way", "on the spool")
    turns = "Turns of the star from free"
    hand.fills({"Radius where the line leaves": "23.5", turns: "2.5", "Temperature at the bench": "18"})


def write_the_finding(hand: BenchHand, files: dict[str, Any]) -> None:
    hand.opens("a finding", "A finding")
    hand.next.get_by_label("The part", exact=True).fill("level-wind pawl")
    hand.fills({"What is wrong, and how it is known": "tip worn to a hook, catches at the right end"})
    hand.next.get_by_label("Row of the fault table").select_option("F15")
    hand.next.get_by_label("Choose them, or let them fall here").set_input_files(files["pawl"])
    hand.fills({"What is to be seen on pawl.png": "the tip, worn to a hook"})
    hand.writes("Write the finding")
    expect(hand.last.get_by_role("img", name="the tip, worn to a hook")).to_be_visible()
    hand.looks("07-diary")


def ask_the_customer(hand: BenchHand) -> None:
    page = hand.page
    hand.next.get_by_role("link", name="Write the quote").click()
    ways = page.get_by_role("region")
    for name in ("Put right", "Improve", "The most this reel should be given"):
        expect(ways.filter(has=page.get_by_role("heading", name=name, exact=True))).to_be_visible()
    improve = page.get_by_role("region", name="Improve")
    for words in ("1 h 8 min", "1,104.00", "1,269.60"):
        expect(improve).to_contain_text(words)
    improve.get_by_role("group", name="Spool end-float").get_by_label("at most").fill("0.12")
    page.get_by_label("A deposit that is asked for").fill("200")
    page.get_by_label("A word to the customer").fill("The second of the three is what we would do.")
    hand.looks("08-quote")
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.get_by_role("heading", name="What we would do to your Tarvak 58R")).to_be_visible()
    hand.looks("09-customer")
    quote = hand.paper(page.get_by_role("link", name="The paper to print"))
    for words in ("Ragna Solbu", "1,104.00", "1,269.60", "0.12"):
        assert words in quote


def write_the_answer(hand: BenchHand) -> None:
    hand.page.get_by_role("link", name="Write the answer").click()
    hand.next.get_by_label(re.compile("^Improve")).check()
    hand.fills({"The exact words": "yes, up to 1,200", "Up to what sum": "1200"})
    hand.looks_at_the_form("10-answer")
    hand.writes("Write the answer")
    expect(hand.last).to_contain_text(re.compile(r"1,104\.00\s+kr; cap 1,200\.00\s+kr"))
    hand.opens("a payment", "A payment")
    hand.fills({"The sum": "200"})
    hand.writes("Write the payment")


def find_the_cog(hand: BenchHand, files: dict[str, Any]) -> None:
    """Found when it was open: 65 more stays inside the cap, so it is told and the work goes on."""
    hand.opens("a finding", "A finding")
    hand.next.get_by_label("The part", exact=True).fill("idler cog")
    hand.fills({"What is wrong, and how it is known": "split through at the bore"})
    hand.next.get_by_label("Row of the fault table").select_option("F16")
    hand.next.get_by_label("Choose them, or let them fall here").set_input_files(files["cog"])
    hand.fills({"What is to be seen on cog.png": "the split"})
    hand.writes("Write the finding")
    hand.next.get_by_role("link", name="Write the quote").click()
    expect(hand.page.get_by_role("region", name="Found since")).to_contain_text(
        re.compile(r"1,169\.00\s+kr, within the cap of 1,200\.00\s+kr")
    )
    hand.page.get_by_role("button", name="Ask the customer").click()
    expect(hand.page.locator("main")).to_contain_text("within the 1,200.00\u00a0kr that you allowed")
    hand.page.get_by_role("link", name="To the diary").click()


def write_the_work(hand: BenchHand) -> None:
    expect(hand.next.locator("h2")).to_have_text("Next: work done")
    for work in hand.next.locator("#id_done > .choice input").all():
        work.check()
    hand.next.get_by_text("something else; only what was agreed may be billed").click()
    hand.next.get_by_label("New level-wind cog").check()
    hand.next.get_by_text("Parts fitted").first.click()
    for number, part in enumerate(("Pawl", "Spool bearing", "Carbon disc set", "Idler cog"), 1):
        if number == 3:
            hand.next.get_by_role("button", name="More lines").first.click()
        row = hand.next.get_by_role("group", name=f"Part {number}")
        row.get_by_label("Part", exact=True).fill(part)
        row.get_by_label("How many").fill("2" if part == "Spool bearing" else "1")
    hand.fills({"Minutes it took": "74"})
    hand.checks("counted: every part that came off is back, replaced or accounted for")
    hand.looks_at_the_form("11-work")
    hand.writes("Write the work")
    expect(hand.last).to_contain_text("2 × Spool bearing, new; Carbon disc set, new; Idler cog, new.")


def measure_after(hand: BenchHand, files: dict[str, Any]) -> None:
    hand.types("Pull with the drag hard on", "6.9", "6.9", "6.9")
    hand.opens("a pull trace", "A pull trace")
    hand.chooses("Pull trace from the gauge", files["pull after"])
    fill_conditions_of_the_pull(hand)
    hand.writes("Write the reading")
    hand.types("Spool end-float", "0.09")
    hand.types("Free-spin time", "31", "31", "31", checks=["off the spool", "off"])
    hand.types("Feel of the handle", checks=["0: smooth"])


def prove(hand: BenchHand) -> None:
    page = hand.page
    expect(hand.next.locator("h2")).to_have_text("Next: the proof")
    hand.next.get_by_role("link", name="Set them beside the promise").click()
    expect(page.get_by_role("heading", name="Promised beside measured")).to_be_visible()
    expect(page.get_by_text("Shown.")).to_have_count(5)
    for tried in page.get_by_role("group", name="Tried by hand, and in order").get_by_role("checkbox").all():
        tried.check()
    hand.looks("12-proof")
    page.get_by_role("button", name="Write the proof").click()
    proof = hand.paper(page.get_by_role("link", name="The proof on paper"))
    for words in ("Tarvak 58R", r"6\.90", ABOUT["1.50"], ABOUT["1.07"], r"0\.12"):
        assert re.search(words, proof), words
    page.get_by_role("link", name="Back to the diary").click()


def sign(second: BenchHand) -> None:
    """Another hand, at another screen, winds it blind."""
    second.page.goto("/visits/1/proof/")
    second.page.get_by_role("button", name="I wound it blind, and sign").click()
    expect(second.page.get_by_role("status")).to_contain_text("Signed")
    second.looks("13-signed")


def bill(hand: BenchHand) -> None:
    expect(hand.next.locator("h2")).to_have_text("Next: the invoice")
    told = hand.next.get_by_role("group", name="Line 6")
    expect(told.get_by_label("What for")).to_have_value("Idler cog")
    expect(told.get_by_label("Sum")).to_have_value(re.compile(r"^65\.00"))
    hand.fills({"Why the bill is more": WHY_MORE})
    hand.looks_at_the_form("14-invoice")
    hand.writes("Write the invoice")
    expect(hand.page.get_by_text("Torbal Kvie wrote this while you were writing.")).to_be_visible()
    for words in ("1,169.00", "233.80", "969.00", WHY_MORE):
        expect(hand.last).to_contain_text(words)
    invoice = hand.paper(hand.last.get_by_role("link", name="Invoice 1"))
    for words in ("Ragna Solbu", "1,169.00", "233.80", "969.00", WHY_MORE):
        assert words in invoice
    hand.opens("a payment", "A payment")
    hand.fills({"The sum": "969"})
    hand.writes("Write the payment")


def send_home(hand: BenchHand) -> None:
    expect(hand.next.locator("h2")).to_have_text("Next: send it home")
    for packed in hand.next.get_by_role("group", name="Packed so").get_by_role("checkbox").all():
        packed.check()
    hand.fills({"Mass of the closed parcel": "745", "Its number": "HP 4418 2210"})
    hand.checks("the proof, before beside after", "the old parts in a bag")
    hand.looks_at_the_form("15-dispatch")
    hand.writes("Write that it went home")
    expect(hand.next.locator("h2")).to_have_text("It has gone home")
    expect(hand.page.locator(".opening")).to_contain_text("It went home on")
    expect(hand.page.locator(".struck")).to_have_count(0)
    hand.looks("16-diary")


def look_at_the_passport(hand: BenchHand) -> None:
    hand.page.get_by_role("link", name="its passport").click()
    leaf = hand.page.locator("main")
    expect(leaf).to_contain_text("58R-20417")
    for words in ("Start-up ratio over time: 2 readings", "Free-spin time over time: 2 readings"):
        expect(leaf.get_by_role("img", name=words)).to_be_visible()
    for words in (ABOUT["1.50"], ABOUT["1.07"], r"5\.80", r"6\.90"):
        expect(leaf).to_contain_text(re.compile(words))
    hand.looks("17-passport")
    hand.page.get_by_role("link", name="On the bench").click()
    expect(leaf).to_contain_text("Nothing lies on the bench")


def look_again_in_the_other_light(hand: BenchHand, light: str) -> None:
    hand.page.emulate_media(color_scheme=light)  # type: ignore[arg-type]
    for address in ("/diary/1/", "/visits/1/proof/", "/reels/1/", "/sheets/tarvak-58r/"):
        hand.page.goto(address)
        hand.looks(f"18{address.replace('/', '-')}{light}")
