"""Pulls typed row by row: what was set, the start-up pull, the running pull; one unit for all of them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.diary.ask.rows import RowForm
from spoolwright.pages.words.asked import BARE_NUMBER
from spoolwright.quantities import NotAQuantity, Typed, read_typed

DIMENSIONS = {"turns": "ratio", "number": "ratio", "speed": "speed"}
UNITS = {"speed": "m/s"}
LONGEST = 40


def _number(label: str) -> forms.CharField:
    box = forms.TextInput({"inputmode": "decimal", "autocomplete": "off", "size": "6"})
    return forms.CharField(label=label, required=False, max_length=LONGEST, widget=box)


class PullRow(RowForm):
    """One pull. A bare number is in the unit chosen for all rows; a unit typed after it counts first."""

    noun = "Pull"
    typed_in = ("point", "start", "run", "judder")
    point = _number("set to")
    start = _number("start-up")
    run = _number("running")
    judder = _number("judder, %")

    def pull(self, along: str, unit: str) -> OnePull:
        """This row as a pull; `Unreadable` says in which cell what is wrong."""
        given = self.cleaned_data
        running = self._read(given["run"], "force", unit, "running")
        start = self._read(given["start"], "force", unit, "start-up")
        at = self._read(
            given["point"] or self._counted(along), DIMENSIONS[along], UNITS.get(along, ""), "set to"
        )
        shaken = self._read(given["judder"], "ratio", "%", "judder")
        if running is None or at is None:
            missing = "the running pull" if running is None else "what was set"
            raise Unreadable(f"{missing} is missing", f"{self.noun} {self.number}", "a number in every row")
        return OnePull(
            at.value,
            running.value,
            start.value if start else None,
            max(running.resolution, start.resolution if start else 0.0),
            shaken.value if shaken else None,
        )

    def _counted(self, along: str) -> str:
        return str(self.number) if along == "number" else ""

    def _read(self, text: str, dimension: str, unit: str, cell: str) -> Typed | None:
        if not text.strip():
            return None
        bare = unit and BARE_NUMBER.fullmatch(text.strip())
        try:
            return read_typed(f"{text} {unit}" if bare else text, dimension)
        except NotAQuantity as fault:
            where = f"{self.noun} {self.number}, {cell}"
            raise Unreadable(f"“{fault.typed}” {fault.reason}", where, fault.accepted) from None


def started(pulls: tuple[OnePull, ...], along: str, system: str) -> list[Mapping[str, Any]]:
    """Rows that were written, as a form shows them, each number with its unit."""

    def force(value: float | None) -> str:
        return "" if value is None else quantities.show(value, "force", system)

    return [
        {
            "point": f"{pull.at:g}",
            "start": force(pull.start_up),
            "run": force(pull.running),
            "judder": "" if pull.judder is None else f"{100 * pull.judder:g}",
        }
        for pull in pulls
    ]
