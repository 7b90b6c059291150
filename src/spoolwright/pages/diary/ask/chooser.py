"""The kinds of reading, in words: each leads to its own form."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.sheets import reading_kinds
from spoolwright.shop.questions import readings


@dataclass(frozen=True)
class KindWay:
    """A kind of reading with the way to its form, and when it was last taken here."""

    title: str
    address: str
    tool: str
    taken: bool


class KindChooser(InkForm):
    """Not sent anywhere: a list of ways that stands where a form would."""

    what = "reading"
    title = "Which reading?"
    template = "diary/ask/_chooser.html"
    own_move = False
    own_files = False

    @property
    def kinds(self) -> list[KindWay]:
        taken = {value.kind for value in readings.results(self.desk.visit.pk)}
        return [
            KindWay(kind.title, self.desk.typed_way(kind.id), kind.tool, kind.id in taken)
            for kind in reading_kinds.kinds().values()
        ]

    @property
    def pull_way(self) -> str:
        return self.desk.way("pull")

    @property
    def live_way(self) -> str:
        return self.desk.way("live")

    @property
    def series_way(self) -> str:
        return self.desk.way("series")

    @property
    def spin_way(self) -> str:
        return self.desk.way("spin")

    @property
    def inertia_way(self) -> str:
        return self.desk.way("inertia")

    @property
    def bearing_way(self) -> str:
        return self.desk.way("bearing")

    @property
    def gears_way(self) -> str:
        return self.desk.way("gears")

    @property
    def hand_way(self) -> str:
        return self.desk.way("hand")
