"""One entry as it is read: its words by kind, the line through it, and the way to write it again."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from django.urls import reverse

from spoolwright.pages.diary import ways
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told import by_hand as told_by_hand
from spoolwright.pages.diary.told import offers, pictures, proofs, readings
from spoolwright.pages.diary.told import series as told_series
from spoolwright.pages.gathered import inertia as told_inertia
from spoolwright.pages.gathered import noise as told_noise
from spoolwright.pages.words import when
from spoolwright.sheets import faults
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.by_hand import by_hand_of
from spoolwright.shop.questions.kept_inertia import inertia_of
from spoolwright.shop.questions.kept_noise import drawn_noise_of, noise_of
from spoolwright.shop.questions.kept_series import series_of
from spoolwright.shop.questions.signals import pull_of, spin_of

OWN_FORMS = {
    "inertia": "inertia",
    "by hand": "hand",
    "bearing noise": "bearing",
    "gear noise": "gears",
    "pull series": "series",
}
"""Ways of a reading whose form writes it again without a file."""
WRITTEN_AGAIN = ("finding", "work", "answer", "invoice", "dispatch")
"""Kinds whose form is called as they are; readings and words have several forms."""


@dataclass(frozen=True)
class Shown:
    """A file as it is shown: its caption, and the words for who cannot see it."""

    attachment: Any
    caption: str
    alt: str = ""


@dataclass(frozen=True)
class ToldBlock:
    """An entry ready for its template. `day` stands in the margin where a new day begins."""

    block: Block
    day: date | None
    meanwhile: str
    again: str
    facts: dict[str, Any] = field(default_factory=dict)

    @property
    def template(self) -> str:
        return f"diary/told/_{self.block.kind}.html"

    @property
    def photos(self) -> list[Shown]:
        return [_shown(file, self.block.entry) for file in self.block.attached if file.attachment.is_photo]

    @property
    def papers(self) -> list[Any]:
        """Files that are no pictures, and the file that a reading was read from."""
        own = getattr(self.block.part, "attachment", None) if self.block.kind == "reading" else None
        others = [file for file in self.block.attached if not file.attachment.is_photo]
        return [*([Shown(own, "as the gauge wrote it")] if own else []), *others]

    @property
    def struck_another_day(self) -> bool:
        strike = self.block.strike
        return bool(strike) and when.local_day(strike.written_at) != when.local_day(
            self.block.entry.written_at
        )


def told(
    desk: Desk, blocks: Iterable[Block], *, before: date | None = None, seen: int = -1
) -> list[ToldBlock]:
    """The entries in order; what others wrote after `seen` is marked. `before`: the day of the one above."""
    found, day = [], before
    for block in blocks:
        that = when.local_day(block.entry.written_at)
        found.append(
            ToldBlock(
                block=block,
                day=that if that != day else None,
                meanwhile=_meanwhile(desk, block, seen),
                again=_again(desk, block),
                facts=_FACTS.get(block.kind, _nothing)(desk, block),
            )
        )
        day = that
    return found


def _shown(file: Any, entry: Any) -> Shown:
    unsaid = f"Photo without words, by {entry.author.shown} at {when.hour(entry.written_at)}"
    return Shown(file.attachment, file.caption, file.caption or unsaid)


def _meanwhile(desk: Desk, block: Block, seen: int) -> str:
    other = block.entry.author_id != desk.hand.pk
    return block.entry.author.shown if 0 <= seen < block.entry.seq and other else ""


def _again(desk: Desk, block: Block) -> str:
    """Where this can be written again: nowhere for what another page writes, or after the reel went home."""
    if not desk.visit.is_open and block.kind not in ("word", "dispatch"):
        return ""
    pk = block.entry.pk
    if block.kind in WRITTEN_AGAIN:
        return desk.way(block.kind, again=pk)
    if block.kind == "word":
        return desk.way("payment" if block.part else "word", again=pk)
    if block.kind == "reading":
        return _reading_again(desk, block, pk)
    return ""


def _reading_again(desk: Desk, block: Block, pk: int) -> str:
    if block.part.way in OWN_FORMS:
        return desk.way(OWN_FORMS[block.part.way], again=pk)
    by_way = {"pull trace": "pull", "spin-down": "spin"}
    if block.part.way in by_way and block.part.attachment_id:
        return desk.way(by_way[block.part.way], again=pk)
    first = next((value for value in block.part.values.all() if value.repeat == 0), None)
    return desk.typed_way(first.kind, again=pk) if first else ""


def _reading(desk: Desk, block: Block) -> dict[str, Any]:
    reading = block.part
    pull, spin = pull_of(reading), spin_of(reading)
    small = pictures.small_pull(pull) if pull else pictures.small_spin(spin) if spin else None
    inertia = inertia_of(reading)
    drawn = small or inertia or series_of(reading) or drawn_noise_of(reading)
    heard = noise_of(reading)
    results = readings.results_of(reading)
    return {
        "told": readings.told(
            results, reading.conditions, desk.tags, desk.system, reading.way, setting_of(desk.sheet)
        ),
        "small": small,
        "spin": spin,
        "said": (
            *(told_inertia.in_words(inertia, desk.system) if inertia else ()),
            *(told_noise.in_words(heard, desk.system) if heard else ()),
            *told_by_hand.below(reading, results, desk.system),
            *told_series.below(reading, desk.system),
        ),
        "chart": reverse("diary:trace", args=[desk.visit.tag, block.entry.pk]) if drawn else "",
        "finding": _to_the_finding(desk, reading),
        "paper": ways.to_paper("reading", block.entry.pk),
        "inputs": told_inertia.inputs(inertia, desk.system) if inertia else (),
    }


def _to_the_finding(desk: Desk, reading: Any) -> str:
    """Where a part that was rejected by hand becomes a finding; nowhere after the reel went home."""
    kept = by_hand_of(reading)
    rejected = kept is not None and kept.call is not None and kept.call.verdict == "reject"
    return desk.way("finding", part=kept.title) if kept and rejected and desk.visit.is_open else ""


def _finding(_: Desk, block: Block) -> dict[str, Any]:
    row = faults.faults().get(block.part.fault)
    return {"symptom": f"{row.symptom[0].lower()}{row.symptom[1:]}" if row else ""}


def _nothing(_: Desk, __: Block) -> dict[str, Any]:
    return {}


_FACTS = {
    "reading": _reading,
    "finding": _finding,
    "quote": lambda desk, block: offers.of_quote(block.part),
    "proof": lambda desk, block: proofs.of_proof(block, desk.system),
    "invoice": lambda desk, block: offers.of_invoice(block.part),
    "arrival": lambda desk, block: {"parcel": desk.visit.parcel},
}
