"""Takes the pictures of the README from the running program: the demo workshop, a fixed seed, a fixed day.

.venv/bin/python docs/make_pictures.py          all of them
.venv/bin/python docs/make_pictures.py bench    one
"""

from __future__ import annotations

import io
import os
import sys
import tempfile
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent
sys.path[:0] = [str(ROOT / "src"), str(ROOT)]

MOMENT = datetime(2026, 3, 18, 9, 40, tzinfo=UTC)
COLOURS = 48
LARGEST = 250_000
DESK, PHONE = (1280, 900), (390, 844)
# Everything that may move: the program is asked for stillness, so that two runs give the same picture.
STILL = {"reduced_motion": "reduce", "color_scheme": "light", "locale": "en-GB", "timezone_id": "Europe/Oslo"}
Picture = Callable[[Any], bytes]


def shot(page: Any, *, top: float, left: float, width: float, height: float) -> bytes:
    """A piece of the page, beginning anywhere on it; hiding the caret would need a style in it."""
    clip = {"x": left, "y": max(0.0, top), "width": width, "height": height}
    taken: bytes = page.screenshot(clip=clip, full_page=True, caret="initial", animations="allow")
    return taken


def around(page: Any, first: Any, last: Any = None, *, most: float = 900.0) -> bytes:
    """From the top of one element to the end of another, the margin with it."""
    begin, end = first.bounding_box(), (last or first).bounding_box()
    scrolled = page.evaluate("window.scrollY")
    top = begin["y"] + scrolled - 16
    height = min(most, end["y"] + end["height"] + scrolled + 16 - top)
    return shot(page, top=top, left=140, width=1000, height=height)


def settled(page: Any, address: str) -> None:
    page.goto(address)
    page.wait_for_load_state("networkidle")
    page.evaluate("document.fonts.ready")


# ---- the pictures, one function each ----


def bench(page: Any) -> bytes:
    settled(page, "/")
    return shot(page, top=0, left=140, width=1000, height=860)


def diary(page: Any) -> bytes:
    settled(page, pier_reel(page))
    entries = page.locator("li.entry")
    return around(page, entries.nth(0), entries.nth(3), most=1000)


def section(page: Any) -> bytes:
    settled(page, "/sheets/tarvak-58r/")
    drawing = page.locator("main svg:visible").first.bounding_box()
    return shot(page, top=drawing["y"], left=drawing["x"], width=drawing["width"], height=drawing["height"])


def quote(page: Any) -> bytes:
    settled(page, pier_reel(page))
    page.locator("a[href*='/quote/']").first.click()
    page.wait_for_load_state("networkidle")
    top = page.get_by_text("side by side", exact=True).bounding_box()["y"] - 24
    return shot(page, top=top, left=140, width=1000, height=1000)


def proof(page: Any) -> bytes:
    settled(page, pier_reel(page))
    page.locator("a[href*='/proof/']").first.click()
    page.wait_for_load_state("networkidle")
    return shot(page, top=0, left=140, width=1000, height=960)


def pull(page: Any) -> bytes:
    """A file that was dropped, drawn before it is written."""
    settled(page, "/diary/88/write/pull/")
    trace = data_folder() / "demo-files" / "reel-88" / "before" / "pull-half-drag.csv"
    page.locator("#next [name=signal]").set_input_files(trace)
    page.locator("#next .chart svg").first.wait_for()
    return around(page, page.locator("#next"), most=900)


def ladder(page: Any) -> bytes:
    settled(page, "/sheets/tarvak-54c/carries/")
    return around(page, page.locator("#ladder figure"), page.locator("#ladder figure .at-desk"))


def spin(page: Any) -> bytes:
    """A recording that was dropped: drawn, with what it says of the bearings and what that rests on."""
    settled(page, "/diary/88/write/spin/")
    recording = data_folder() / "demo-files" / "reel-88" / "before" / "spin.wav"
    page.locator("#next [name=signal]").set_input_files(recording)
    drawn = page.locator("#next .drawn")
    drawn.locator(".chart svg").first.wait_for()
    return around(page, drawn, most=735)


def book(page: Any) -> bytes:
    """The coefficient that most proofs stand behind: from the sheet's range to what is believed now."""
    settled(page, "/book/start-up-woven-carbon-greased-new-discs/")
    page.locator("main [data-chart] svg").first.wait_for()
    return shot(page, top=60, left=140, width=1000, height=760)


def phone(page: Any) -> bytes:
    return on_a_phone(page, "/arrival/")


def thumb(page: Any) -> bytes:
    """Keys as big as a gloved thumb, for the numbers that a hanging scale shows."""
    return on_a_phone(page, "/diary/88/write/live/", to=".live-pad")


def on_a_phone(page: Any, address: str, to: str = "") -> bytes:
    """One screen of a phone, from the top of the page or from an element on it."""
    page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
    settled(page, address)
    top = page.locator(to).bounding_box()["y"] - 24 if to else 0
    taken = shot(page, top=top, left=0, width=PHONE[0], height=PHONE[1])
    page.set_viewport_size({"width": DESK[0], "height": DESK[1]})
    return taken


PICTURES: dict[str, Picture] = {
    "bench": bench,
    "diary": diary,
    "section": section,
    "pull": pull,
    "ladder": ladder,
    "quote": quote,
    "proof": proof,
    "phone": phone,
    "thumb": thumb,
    "spin": spin,
    "book": book,
}


def pier_reel(page: Any) -> str:
    """The diary of scenario 1: the pier reel, which has been all the way."""
    settled(page, "/find/?q=Solbu")
    address: str = page.locator("a[href^='/diary/']").first.get_attribute("href").split("#")[0]
    return address


# ---- the running program ----


def data_folder() -> Path:
    return Path(os.environ["SPOOLWRIGHT_DATA"])


def open_demonstration(folder: Path) -> str:
    """Fill the folder with the demo as it stands on the fixed day; gives back the address of the server."""
    os.environ |= {"SPOOLWRIGHT_SECRET_KEY": "only for pictures " * 4, "SPOOLWRIGHT_TIME_ZONE": "Europe/Oslo"}
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"  # the browser's own loop runs in this thread
    from spoolwright.command import first_start, house

    house.open_house(folder)
    stop_the_clock()
    first_start.bring_tables_up_to_date()
    first_start.collect_static(folder)
    from spoolwright.demo import load, sample_files

    loaded = load.load(today=MOMENT.date())
    sample_files.write(folder, loaded.waiting)
    return serve()


def stop_the_clock() -> None:
    """It is the fixed day wherever a page asks for the time."""
    from django.template import defaulttags
    from django.utils import timezone

    class Stopped(datetime):
        @classmethod
        def now(cls, tz: Any = None) -> datetime:
            return MOMENT.astimezone(tz)

    timezone.now = lambda: MOMENT
    defaulttags.datetime = Stopped


def serve() -> str:
    from django.conf import settings

    from spoolwright.command.listening import server
    from spoolwright.command.wsgi import application

    serving = server(application, "127.0.0.1", 0, settings.LARGEST_UPLOAD)
    threading.Thread(target=serving.run, daemon=True).start()
    return f"http://127.0.0.1:{serving.effective_port}"


@contextmanager
def signed_in(address: str) -> Iterator[Any]:
    """A page of a real browser, with the owner signed in."""
    from playwright.sync_api import sync_playwright

    from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
    from spoolwright.shop.questions.people import person
    from tests.browser.find import find

    token = make_sign_in_link(hand=None, person=person("ingjerd"))
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    flags = ["--no-sandbox"] if as_root else []
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=find(), args=flags)
        size = {"width": DESK[0], "height": DESK[1]}
        page = browser.new_context(base_url=address, viewport=size, **STILL).new_page()
        page.goto(f"/sign-in/{token}/")
        page.get_by_role("button").first.click()
        page.wait_for_load_state()
        yield page
        browser.close()


def pressed(png: bytes) -> bytes:
    """The same picture with few colours, as a drawing in ink has them."""
    from PIL import Image

    with Image.open(io.BytesIO(png)) as picture:
        few = picture.convert("RGB").quantize(COLOURS, dither=Image.Dither.NONE)
    out = io.BytesIO()
    few.save(out, "PNG", optimize=True)
    if len(out.getvalue()) > LARGEST:
        raise SystemExit(f"A picture has {len(out.getvalue())} bytes, more than {LARGEST}: show less.")
    return out.getvalue()


def main(wanted: list[str]) -> None:
    unknown = set(wanted) - set(PICTURES)
    if unknown:
        raise SystemExit(f"No such picture: {', '.join(sorted(unknown))}. There are: {', '.join(PICTURES)}.")
    (HERE / "pictures").mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        address = open_demonstration(Path(folder))
        with signed_in(address) as page:
            for name in wanted or PICTURES:
                (HERE / "pictures" / f"{name}.png").write_bytes(pressed(PICTURES[name](page)))


if __name__ == "__main__":
    main(sys.argv[1:])
