"""The diary in a real browser: written by hand at both widths, files chosen once, two hands at once."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.demo import signals
from tests.browser import the_line
from tests.pages.diary.at_the_desk import arrived, photo
from tests.shop import walk

RESULTS = Path(__file__).resolve().parents[2] / "test-results"
THUMB = 48
LOWER_THAN = """least => [...document.querySelectorAll(
    'button, input:not([type=hidden], [type=radio], [type=checkbox]), select, textarea, summary, .choice,'
    + '.others a')].filter(e => e.offsetParent && e.getBoundingClientRect().height < least - 0.5)
    .map(e => e.outerHTML.slice(0, 160))"""


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"
    monkeypatch.setattr(walk, "PHOTO", photo())
    RESULTS.mkdir(exist_ok=True)


def shot(page: Page, name: str, size: str) -> None:
    page.locator("#next").scroll_into_view_if_needed()
    page.screenshot(path=RESULTS / f"diary-{name}-{size}.png", full_page=True)


def charts_are_drawn(page: Page) -> None:
    expect(page.locator("[data-chart]")).to_have_attribute("data-drawn", "yes", timeout=20_000)


def pull_file(name: str = "half drag.csv", **shape: float) -> dict[str, Any]:
    data = signals.pull_trace(signals.PullShape(**shape), seed=2).to_csv("semicolon")
    return {"name": name, "mimeType": "text/csv", "buffer": data}


def fill_conditions(page: Page) -> None:
    page.get_by_label("on the spool").check()
    page.get_by_label("Radius where the line leaves").fill("23.5")
    page.get_by_label("Turns of the star from free").fill("1 1/4")
    page.get_by_label("Temperature at the bench").fill("19")


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_every_kind_of_entry_and_form_is_accessible(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    gone = walk.everything(shop.bench)
    visit = arrived(shop.bench, name="Aslak Rein", sheet="tarvak-52")
    walk.answered(shop.bench, walk.quoted(shop.bench, visit))
    page = new_page(size, shop.owner, color_scheme=look)
    rooms = [
        f"/diary/{gone.tag}/",
        f"/diary/{visit.tag}/",
        f"/diary/{visit.tag}/strike/{first_entry(visit)}/",
    ]
    rooms += [
        f"/diary/{visit.tag}/write/{what}/"
        for what in (
            "pull",
            "live",
            "spin",
            "finding",
            "work",
            "answer",
            "payment",
            "invoice",
            "dispatch",
            "move",
            "word",
        )
    ]
    rooms += [f"/diary/{visit.tag}/reading/{kind}/" for kind in ("mass", "feel", "pull_full")]
    for room in rooms:
        page.goto(room)
        axe(page)
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"], room
        assert page.evaluate(LOWER_THAN, THUMB) == [], room


def first_entry(visit: Any) -> int:
    return visit.entries.order_by("seq").first().pk


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_a_pull_trace_is_drawn_before_it_is_written(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], size: str
) -> None:
    visit = arrived(shop.bench)
    page = new_page(size, shop.bench)
    page.goto(f"/diary/{visit.tag}/")
    page.get_by_role("link", name="a pull trace").click()
    expect(page.get_by_role("heading", name="A pull trace")).to_be_visible()
    expect(page).to_have_url(re.compile(f"/diary/{visit.tag}/write/pull/$"))
    page.get_by_label("Radius where the line leaves").fill("23.5")
    page.get_by_label("Pull trace from the gauge").set_input_files(pull_file(start_up_ratio=1.5))
    charts_are_drawn(page)
    expect(page.get_by_text("half drag.csv is kept")).to_be_visible()
    expect(page.get_by_label("Radius where the line leaves")).to_have_value("23.5")
    assert visit.entries.count() == 1
    axe(page)
    shot(page, "drawn", size)
    page.keyboard.press("Escape")
    page.locator("#next h2").click()
    page.keyboard.press("n")
    expect(page.locator(".chart-numbers table").first).to_be_visible()
    fill_conditions(page)
    page.get_by_role("button", name="Write the reading").click()
    expect(page.locator(".entry .trace-way")).to_be_visible()
    expect(page).to_have_url(re.compile(f"/diary/{visit.tag}/$"))
    expect(page.locator("#next h2")).to_contain_text("Next:")
    page.locator(".trace-way").click()
    charts_are_drawn(page)
    axe(page)
    shot_of_trace(page, size)


def shot_of_trace(page: Page, size: str) -> None:
    page.screenshot(path=RESULTS / f"diary-trace-{size}.png", full_page=True)


def test_what_the_file_does_not_say_is_asked_and_the_file_is_kept(
    desk_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    visit = arrived(shop.bench)
    rows = b"".join(b"%.2f;%d\n" % (k / 20, 0 if k < 20 else 25 if k < 120 else 0) for k in range(140))
    desk_page.goto(f"/diary/{visit.tag}/write/pull/")
    desk_page.get_by_label("Pull trace from the gauge").set_input_files(
        {"name": "gauge.csv", "mimeType": "text/csv", "buffer": b"time [s];pull\n" + rows}
    )
    unit = desk_page.get_by_label("The unit of the pull")
    expect(unit).to_be_visible()
    expect(desk_page.get_by_text("gauge.csv is kept")).to_be_visible()
    unit.select_option("N")
    desk_page.get_by_role("button", name="Draw it").click()
    charts_are_drawn(desk_page)


def test_a_recording_becomes_a_curve(desk_page: Page, shop: Any) -> None:
    visit = arrived(shop.bench)
    shape = signals.SpinShape(initial_speed=90.0, constant=6.0, viscous=0.05)
    sound = signals.spin_recording(shape, seed=3).to_wav()
    desk_page.goto(f"/diary/{visit.tag}/write/spin/")
    desk_page.get_by_label("The sound of the spool, or its ticks").set_input_files(
        {"name": "spin.wav", "mimeType": "audio/wav", "buffer": sound}
    )
    charts_are_drawn(desk_page)
    shot(desk_page, "spin", "desk")
    desk_page.get_by_label("off the spool").check()
    desk_page.get_by_role("group", name="Cast brakes").get_by_label("off", exact=True).check()
    desk_page.get_by_label("Temperature at the bench").fill("19")
    desk_page.get_by_role("button", name="Write the reading").click()
    expect(desk_page.locator(".entry").filter(has_text="dry friction in bearings")).to_be_visible()


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_a_finding_with_its_photo(new_page: Callable[..., Page], shop: Any, size: str) -> None:
    visit = arrived(shop.bench)
    page = new_page(size, shop.bench)
    page.goto(f"/diary/{visit.tag}/write/finding/")
    page.get_by_label("What is wrong").fill("tip worn to a hook")
    page.get_by_text("or touch it on the drawing").click()
    page.locator('.drawing-to-touch a[data-part="pinion"]').first.focus()
    page.keyboard.press("Enter")
    expect(page.get_by_label("The part")).to_have_value(re.compile("Pinion"))
    page.get_by_label("Row of the fault table").select_option("F15")
    expect(page.locator(".fault-chosen")).to_contain_text("pawl tip worn 45 %")
    page.get_by_label("Choose them").set_input_files(
        {"name": "tip.jpg", "mimeType": "image/jpeg", "buffer": photo()}
    )
    page.get_by_label("What is to be seen on tip.jpg").fill("pawl tip beside a scale")
    expect(page.get_by_label("What is wrong")).to_have_value("tip worn to a hook")
    shot(page, "finding", size)
    page.get_by_role("button", name="Write the finding").click()
    expect(page.get_by_alt_text("pawl tip beside a scale")).to_be_visible()
    expect(page.locator(".entry").filter(has_text="tip worn to a hook")).to_be_visible()


def test_two_hands_at_once_see_each_other(new_page: Callable[..., Page], shop: Any) -> None:
    visit = arrived(shop.bench)
    torbal, ingjerd = new_page("phone", shop.bench), new_page("desk", shop.owner)
    torbal.goto(f"/diary/{visit.tag}/write/finding/")
    ingjerd.goto(f"/diary/{visit.tag}/write/word/")
    ingjerd.get_by_label("In your own words").fill("She rang: she needs it on Friday.")
    ingjerd.get_by_role("button", name="Write it").click()
    expect(ingjerd.locator(".entry").filter(has_text="needs it on Friday")).to_be_visible()
    torbal.get_by_label("The part").fill("pawl")
    torbal.get_by_label("What is wrong").fill("worn")
    torbal.get_by_role("button", name="Write the finding").click()
    expect(torbal.get_by_text("Ingjerd Vannes wrote this while you were writing.")).to_be_visible()
    expect(torbal.locator(".entry").filter(has_text="needs it on Friday")).to_be_visible()
    expect(torbal.locator(".entry").filter(has_text="Found on the pawl: worn")).to_be_visible()
    torbal.screenshot(path=RESULTS / "diary-meanwhile-phone.png", full_page=True)


def test_what_was_typed_survives_a_reload_and_is_gone_once_written(desk_page: Page, shop: Any) -> None:
    visit = arrived(shop.bench)
    desk_page.goto(f"/diary/{visit.tag}/")
    desk_page.get_by_role("link", name="a finding").click()
    desk_page.get_by_label("What is wrong").fill("tip worn")
    desk_page.reload()
    expect(desk_page.get_by_label("What is wrong")).to_have_value("tip worn")
    desk_page.get_by_label("The part").fill("pawl")
    desk_page.get_by_role("button", name="Write the finding").click()
    expect(desk_page.locator(".entry").filter(has_text="Found on the pawl")).to_be_visible()
    desk_page.goto(f"/diary/{visit.tag}/write/finding/")
    expect(desk_page.get_by_label("What is wrong")).to_have_value("")
    expect(desk_page.locator(".kept-words")).to_have_count(0)


def test_back_and_forth_through_the_forms(desk_page: Page, shop: Any) -> None:
    visit = arrived(shop.bench)
    desk_page.goto(f"/diary/{visit.tag}/")
    desk_page.keyboard.press("w")
    expect(desk_page.locator("#next")).to_be_in_viewport()
    desk_page.get_by_role("link", name="a finding").click()
    expect(desk_page.locator("#next")).to_be_focused()
    expect(desk_page.get_by_role("heading", name="A finding")).to_be_visible()
    desk_page.go_back()
    expect(desk_page.get_by_role("heading", name="Next: mass")).to_be_visible()
    expect(desk_page).to_have_url(re.compile(f"/diary/{visit.tag}/(#next)?$"))
    desk_page.go_forward()
    expect(desk_page.get_by_role("heading", name="A finding")).to_be_visible()


def test_a_lost_connection_loses_nothing(
    desk_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    for words in ("ERR_INTERNET_DISCONNECTED", "htmx:afterRequest", "htmx:sendError"):
        expect_trouble(words)
    visit = arrived(shop.bench)
    desk_page.goto(f"/diary/{visit.tag}/write/word/")
    desk_page.get_by_label("In your own words").fill("it runs well now")
    the_line.lose(desk_page)
    desk_page.get_by_role("button", name="Write it").click()
    expect(desk_page.locator(".kept-words")).to_contain_text("Not sent")
    the_line.find_again(desk_page)
    desk_page.get_by_role("button", name="Send it again").click()
    expect(desk_page.locator(".entry").filter(has_text="it runs well now")).to_be_visible()
    assert visit.entries.count() == 2


def test_a_file_that_is_too_large_is_said_beside_its_field(
    desk_page: Page, shop: Any, tmp_path: Path
) -> None:
    visit = arrived(shop.bench)
    large = tmp_path / "film.csv"
    with large.open("wb") as out:
        out.truncate(200 * 2**20)
    desk_page.goto(f"/diary/{visit.tag}/write/pull/")
    desk_page.get_by_label("Radius where the line leaves").fill("23.5")
    desk_page.get_by_label("Pull trace from the gauge").set_input_files(large)
    expect(desk_page.locator("#id_signal_error")).to_contain_text("film.csv has 200 MB")
    expect(desk_page.get_by_label("Radius where the line leaves")).to_have_value("23.5")
    assert visit.entries.count() == 1


def test_a_refused_form_keeps_its_file_and_takes_the_focus(
    desk_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    visit = arrived(shop.bench)
    desk_page.goto(f"/diary/{visit.tag}/write/pull/")
    desk_page.get_by_label("Pull trace from the gauge").set_input_files(pull_file())
    charts_are_drawn(desk_page)
    desk_page.get_by_role("button", name="Write the reading").click()
    expect(desk_page.locator(".fault-list")).to_be_focused()
    expect(desk_page.locator(".fault-list")).to_contain_text("cannot be compared with any other")
    expect(desk_page.get_by_text("half drag.csv is kept")).to_be_visible()
    charts_are_drawn(desk_page)


def test_strike_out_and_write_again_by_keyboard(desk_page: Page, shop: Any) -> None:
    visit = arrived(shop.bench)
    entry = walk.read(shop.bench, visit, "end_float", 0.42e-3, 1e-5, "length").entry
    desk_page.goto(f"/diary/{visit.tag}/")
    block = desk_page.locator(f"#entry-{entry.pk}")
    block.locator("summary").focus()
    desk_page.keyboard.press("Enter")
    block.get_by_role("link", name="or write it again").focus()
    desk_page.keyboard.press("Enter")
    expect(desk_page.get_by_label("Spool end-float")).to_have_value("0.420")
    desk_page.get_by_label("Spool end-float").fill("0.24")
    desk_page.get_by_label("Why the old one is struck out").fill("digits turned round")
    desk_page.get_by_role("button", name="Write the reading").click()
    struck = desk_page.locator(".struck")
    expect(struck).to_contain_text("digits turned round")
    expect(struck.locator("del")).to_contain_text("0.420")
    struck.get_by_role("link", name="Written again").click()
    expect(desk_page.locator(":target")).to_contain_text("0.24")
    desk_page.screenshot(path=RESULTS / "diary-struck-desk.png", full_page=True)


def test_without_scripts_the_whole_way_is_pages(new_page: Callable[..., Page], shop: Any) -> None:
    visit = arrived(shop.bench)
    page = new_page("desk", shop.bench, java_script_enabled=False)
    page.goto(f"/diary/{visit.tag}/")
    page.get_by_role("link", name="a pull trace").click()
    page.get_by_label("Pull trace from the gauge").set_input_files(pull_file())
    page.get_by_role("button", name="Draw it").click()
    expect(page.get_by_text("half drag.csv is kept")).to_be_visible()
    expect(page.get_by_text("the same in numbers")).to_be_visible()
    fill_conditions(page)
    page.get_by_role("button", name="Write the reading").click()
    expect(page.get_by_text("Written.")).to_be_visible()
    expect(page.locator(".trace-way")).to_be_visible()
