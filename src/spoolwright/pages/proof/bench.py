"""What lies on the bench before a proof: what was promised, what was read since, what is still to do."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import Any

from django.http import HttpRequest

from spoolwright.judgement.release_gate import CAUTION, GateRow, release_gate
from spoolwright.pages import doors
from spoolwright.pages.gathered import pictures, signals
from spoolwright.pages.proof.beside import Beside, beside, is_to_be_taken
from spoolwright.pages.words import shown
from spoolwright.papers.charts import Chart
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.diary import Diary, diary
from spoolwright.shop.questions.readings import ToProve, taken_after, to_prove


class Bench:
    """One request for one visit; what costs a question is asked once."""

    caution = CAUTION

    def __init__(self, request: HttpRequest, tag: int) -> None:
        self.request = request
        self.visit = doors.found(by_number.visit_tagged(tag), "No reel of ours carries this tag.")

    @property
    def system(self) -> str:
        return shown.system_of(self.request.user)

    @cached_property
    def diary(self) -> Diary:
        return doors.found(diary(self.visit.pk))

    @cached_property
    def promises(self) -> tuple[ToProve, ...]:
        return to_prove(self.visit.pk, self.system)

    @property
    def pairs(self) -> list[ToProve]:
        """The promises for which a reading stands that can prove them."""
        return [row for row in self.promises if row.measured is not None]

    @cached_property
    def rows(self) -> list[Beside]:
        setting = setting_of(pictures.sheet_of(self.visit))
        return [beside(row, self.visit.tag, self.system, setting) for row in self.promises]

    @property
    def unmeasured(self) -> list[Beside]:
        return [row for row in self.rows if is_to_be_taken(row)]

    @property
    def worked(self) -> bool:
        return bool(self.diary.of_kind("work"))

    @cached_property
    def gate(self) -> tuple[GateRow, ...]:
        sheet = pictures.sheet_of(self.visit)
        return release_gate(sheet, taken_after(self.visit.pk), system=self.system)

    @property
    def measured_gate(self) -> list[GateRow]:
        return [row for row in self.gate if row.stand != "by hand"]

    @property
    def left_over(self) -> str:
        """What lay on the mat when the last work was written."""
        works = self.diary.of_kind("work")
        return works[-1].part.left_over if works else ""

    @property
    def after(self) -> Sequence[Block]:
        """What was written after the last work."""
        last = max((block.entry.seq for block in self.diary.of_kind("work")), default=0)
        return [b for b in self.diary.blocks if b.entry.seq > last and not b.is_struck]

    @property
    def pull(self) -> Chart | None:
        return signals.pull_chart(self.after, self.pairs, self.system, width=None)

    @property
    def spin(self) -> Chart | None:
        return signals.spin_chart(self.after, self.system, width=None)

    @cached_property
    def written(self) -> Block | None:
        """The last proof that stands, where no work came after it."""
        proofs = [block for block in self.after if block.kind == "proof"]
        return proofs[-1] if proofs else None

    @property
    def signs(self) -> list[Any]:
        """Who has signed the proof that stands."""
        signed = self.written.part.signs.all() if self.written else []
        return [sign.entry for sign in signed if not hasattr(sign.entry, "strike")]

    @property
    def may_sign(self) -> bool:
        me = self.request.user.pk
        wrote = self.written is not None and self.written.entry.author_id == me
        return self.written is not None and not wrote and me not in [e.author_id for e in self.signs]
