"""Files that came with a form before anything was written: put away at once, so none is chosen twice."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

from django.http import HttpRequest, QueryDict

from spoolwright.pages.diary.photos import fault_of
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.open_diary import Attached
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import by_number

MOST = 12
"""Photographs of one strip-down, by the rule of the trade."""


@dataclass
class KeptFiles:
    """What one file field has brought so far. `faults` says what was wrong with those that were not kept."""

    name: str
    attachments: list[Any] = field(default_factory=list)
    captions: dict[int, str] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)

    @property
    def hidden_name(self) -> str:
        return f"{self.name}_kept"

    @property
    def rows(self) -> list[tuple[Any, str, str]]:
        """Each file with the name of its caption field and what was typed there."""
        return [(a, f"{self.name}_caption_{a.pk}", self.captions.get(a.pk, "")) for a in self.attachments]

    @property
    def last(self) -> Any:
        """The file of a field that takes one: the one that came last."""
        return self.attachments[-1] if self.attachments else None

    def attached(self) -> Sequence[Attached]:
        return [Attached(a, self.captions.get(a.pk, "").strip()[:300]) for a in self.attachments]


def keep(request: HttpRequest, name: str, *, photos_checked: bool = True) -> KeptFiles:
    """Put away what this form brought now, beside what it brought before."""
    before = list(by_number.attachments_of(request.user, _numbers(request.POST, f"{name}_kept")))
    kept = KeptFiles(name, before)
    for file in request.FILES.getlist(name):
        _put_away(request, kept, file, photos_checked)
    left_out = set(_numbers(request.POST, f"{name}_left_out"))
    kept.attachments = [a for a in kept.attachments if a.pk not in left_out]
    kept.captions = {a.pk: request.POST.get(f"{name}_caption_{a.pk}", "") for a in kept.attachments}
    return kept


def _put_away(request: HttpRequest, kept: KeptFiles, file: Any, photos_checked: bool) -> None:
    if len(kept.attachments) >= MOST:
        kept.faults.append(f"{file.name}: {MOST} files go into one entry. Write this one, then the next.")
        return
    fault = fault_of(file) if photos_checked else ""
    if fault:
        kept.faults.append(f"{file.name}: {fault}")
        return
    try:
        kept.attachments.append(attach_file(hand=request.user, data=file, original_name=file.name))
    except Refused as refusal:
        kept.faults.append(refusal.words)


def _numbers(sent: QueryDict, name: str) -> list[int]:
    return [
        int(text)
        for text in _texts(sent.getlist(name))
        if text.isascii() and text.isdigit() and len(text) < 19
    ]


def _texts(values: Iterable[str]) -> list[str]:
    return [text.strip() for value in values for text in value.split(",")]
