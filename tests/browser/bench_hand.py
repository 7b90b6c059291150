"""One person at one screen: fills the forms of a diary by their labels, and looks at each page."""

from __future__ import annotations

import io
from base64 import b64encode
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Literal

from playwright.sync_api import Locator, Page, expect
from pypdf import PdfReader

SHOTS = Path(__file__).resolve().parents[2] / "test-results"
READING_TAKES = 30_000  # ms: the first signal that a server reads brings the numeric libraries in with it
CARET: Literal["initial"] = "initial"
"""A hidden caret is a style on every field, which htmx copies and the policy then complains of."""
LET_FALL = """(place, file) => {
    const bytes = Uint8Array.from(atob(file.data), one => one.charCodeAt(0)), carried = new DataTransfer();
    carried.items.add(new File([bytes], file.name, { type: file.type }));
    place.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, bubbles: true, cancelable: true }));
}"""
TOO_WIDE = """width => [...document.querySelectorAll('main *')]
    .filter(one => one.getBoundingClientRect().right > width + 1).map(one => one.outerHTML.slice(0, 120))"""


def carried(name: str, data: bytes, media_type: str = "") -> dict[str, Any]:
    """A file as the file chooser takes it."""
    return {"name": name, "mimeType": media_type, "buffer": data}


@dataclass(frozen=True)
class BenchHand:
    """`story` names the pictures that are kept; `axe` is the check of accessibility."""

    page: Page
    axe: Callable[..., None]
    story: str

    @property
    def next(self) -> Locator:
        """The open block of a diary."""
        return self.page.locator("#next")

    @property
    def entries(self) -> Locator:
        return self.page.locator(".diary > .entry:not(.open-block)")

    @property
    def last(self) -> Locator:
        """The entry that was written last."""
        return self.entries.last

    def looks(self, name: str) -> None:
        """The page as it stands is within its width, accessible, and kept as a picture."""
        self.fits(name)
        self.axe(self.page)
        self.page.screenshot(path=self.picture(name), full_page=True, caret=CARET, scale="css")

    def looks_at_the_form(self, name: str) -> None:
        """The same of the open block alone, where the rest of the diary is as it was."""
        self.fits(name)
        self.axe(self.page, "#next")
        self.next.screenshot(path=self.picture(name), caret=CARET, scale="css")

    def fits(self, name: str) -> None:
        room = (self.page.viewport_size or {"width": 0})["width"]
        wide = self.page.evaluate("document.documentElement.scrollWidth")
        assert wide <= room, f"{name} is {wide} px wide: {self.page.evaluate(TOO_WIDE, room)}"

    def picture(self, name: str) -> Path:
        SHOTS.mkdir(exist_ok=True)
        return SHOTS / f"{self.story}-{name}.png"

    def opens(self, way: str, title: str) -> None:
        """Choose what to write, by the words under the open block, and wait for its form."""
        self.next.get_by_role("link", name=way, exact=True).last.click()
        expect(self.next.locator("h2")).to_have_text(title)

    def types(self, kind: str, *tries: str, checks: Sequence[str] = (), **labels: str) -> None:
        """A typed reading from the list of all kinds: its tries, its conditions, and into the diary."""
        if self.next.locator(".kinds").count() == 0:
            self.next.get_by_role("link", name="a reading", exact=True).click()
        self.next.locator(".kinds").get_by_role("link", name=kind, exact=True).click()
        expect(self.next.locator("h2")).to_have_text(kind)
        for label, value in zip((kind, "second try", "third try"), tries, strict=False):
            self.next.get_by_label(label, exact=True).fill(value)
        self.checks(*checks)
        self.writes("Write the reading")

    def checks(self, *labels: str) -> None:
        for label in labels:
            self.next.get_by_label(label, exact=True).check()

    def fills(self, fields: dict[str, str]) -> None:
        for label, value in fields.items():
            self.next.get_by_label(label, exact=False).fill(value)

    def writes(self, button: str) -> None:
        """Press the button of the open block, and see an entry more; others may have written meanwhile."""
        before = self.entries.count()
        self.next.get_by_role("button", name=button, exact=True).click()
        expect(self.entries.nth(before)).to_be_attached(timeout=READING_TAKES)

    def lets_fall(self, label: str, file: dict[str, Any]) -> None:
        """A file dragged onto the entry, as from a folder that lies open beside the page."""
        told = {"name": file["name"], "type": file["mimeType"], "data": b64encode(file["buffer"]).decode()}
        self.next.get_by_label(label).evaluate(LET_FALL, told)
        self.sees_the_curve()

    def chooses(self, label: str, file: dict[str, Any]) -> None:
        self.next.get_by_label(label).set_input_files(file)
        self.sees_the_curve()

    def sees_the_curve(self) -> None:
        """What the file says, drawn before anything of it is written."""
        drawn = self.next.get_by_role("region", name="What the file says; not yet written")
        expect(drawn).to_be_visible(timeout=READING_TAKES)
        expect(drawn.locator("[data-chart] svg")).to_be_visible()

    def paper(self, link: Locator) -> str:
        """The words of the PDF behind a link."""
        answer = self.page.context.request.get(link.get_attribute("href") or "")
        body = answer.body()
        assert answer.headers["content-type"] == "application/pdf", answer.headers
        assert body.startswith(b"%PDF"), body[:20]
        pages = PdfReader(io.BytesIO(body)).pages
        return " ".join(" ".join(page.extract_text() for page in pages).split())
