"""Where one hand sits before one diary: who writes, in whose units, and what is known of the reel."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from django.http import HttpRequest
from django.urls import reverse

from spoolwright.judgement import findings
from spoolwright.pages import doors
from spoolwright.pages.words import shown
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import by_number, reel_sheets
from spoolwright.shop.questions.diary import Diary, diary


class Desk:
    """One request to one diary. What costs a question to the database is asked once."""

    def __init__(self, request: HttpRequest, tag: int) -> None:
        self.request = request
        self.visit = doors.found(by_number.visit_tagged(tag), "No reel of ours carries this tag.")

    @property
    def hand(self) -> Any:
        return self.request.user

    @property
    def system(self) -> str:
        return shown.system_of(self.hand)

    @property
    def shop(self) -> Any:
        return doors.shop(self.request)

    @property
    def address(self) -> str:
        return reverse("diary:diary", args=[self.visit.tag])

    @cached_property
    def sheet(self) -> ReelSheet | None:
        """The reel's own sheet, where one is known."""
        version = self.visit.reel.sheet_version
        return reel_sheets.read(version) if version else None

    @property
    def kind(self) -> str:
        """The kind of reel as its sheet has it; empty where no sheet is known."""
        return self.sheet.reel.kind if self.sheet else ""

    @property
    def tags(self) -> tuple[str, ...]:
        """What limits of readings may hang on."""
        return findings.tags(self.sheet) if self.sheet else ()

    @cached_property
    def diary(self) -> Diary:
        return doors.found(diary(self.visit.pk))

    def look_again(self) -> None:
        """After something was written: forget what was read before."""
        self.visit = doors.found(by_number.visit(self.visit.pk))
        self.__dict__.pop("diary", None)

    def way(self, what: str, **more: Any) -> str:
        """The address at which an entry of this kind is written."""
        asked = "&".join(f"{name}={value}" for name, value in more.items() if value)
        address = reverse("diary:write", args=[self.visit.tag, what])
        return f"{address}?{asked}" if asked else address

    def typed_way(self, kind: str, **more: Any) -> str:
        """The address at which a reading of this kind is typed."""
        asked = "&".join(f"{name}={value}" for name, value in more.items() if value)
        address = reverse("diary:typed", args=[self.visit.tag, kind])
        return f"{address}?{asked}" if asked else address
