"""A repeatability study as a form: who, how many parts, how often; then one field a try, or a file."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from django import forms
from django.core.files.uploadedfile import UploadedFile

from spoolwright.bench import gauge_study_file
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.words.asked import BARE_NUMBER, DayField, QuantityField, ask_in
from spoolwright.quantities import DIMENSIONS, NotAQuantity, read
from spoolwright.sheets.instrument_kinds import step_dimension
from spoolwright.shop.acts.write_gauge_study import Studied, Try
from spoolwright.shop.questions.instruments import Shelved

MOST_PARTS, MOST_PEOPLE, MOST_TRIES = 10, 4, 5
LARGEST_FILE = 200_000
"""Bytes; a thousand tries are a tenth of it."""


@dataclass(frozen=True)
class OneHand:
    """The fields of one person: for each try the parts in their order."""

    person: str
    rows: list[tuple[int, list[Any]]]


class StudyForm(forms.Form):
    """First what is studied; once that is said, its fields. A file takes the place of them."""

    what = forms.CharField(
        label="What is measured", max_length=200, help_text="Such as: friction discs, thickness."
    )
    people = forms.CharField(
        label="Who measures",
        max_length=250,
        help_text="Names with a comma between them, one to four. Nobody looks at what the others wrote.",
    )
    parts = forms.IntegerField(
        label="How many parts",
        min_value=2,
        max_value=MOST_PARTS,
        initial=5,
        help_text="Number them with a pen. Take them from thin to thick, as they come to the bench.",
    )
    tries = forms.IntegerField(label="How often each", min_value=2, max_value=MOST_TRIES, initial=2)
    day = DayField(label="On", required=False, help_text="Left empty: today.")
    file = forms.FileField(
        label="Or a file of it",
        required=False,
        help_text="CSV with the headings part, person and value, one line a try. It goes before the fields.",
    )
    words = forms.CharField(
        label="In words", required=False, max_length=4000, widget=forms.Textarea({"rows": 2})
    )

    def __init__(self, data: Any, files: Any, *, of: Shelved, system: str) -> None:
        super().__init__(data, files)
        self.of, self.dimension = of, of.row.dimension
        kind = DIMENSIONS[self.dimension]
        own = kind.imperial if system == "imperial" else kind.metric
        units = [name for name in dict.fromkeys([*own, *(unit.name for unit in kind.units)]) if name]
        self.fields["unit"] = forms.ChoiceField(label="Numbers are in", choices=[(u, u) for u in units])
        self.fields["tolerance"] = QuantityField(
            step_dimension(self.dimension),
            label="From limit to limit",
            required=False,
            help_text="How wide the tolerance of what is measured is, if it has one.",
        )
        ask_in(self, system)
        for name in self._cells():
            self.fields[name] = forms.CharField(
                required=False,
                max_length=40,
                label=_told(name, self.persons),
                widget=forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}),
            )
        self.order_fields(["what", "people", "parts", "tries", "unit", "tolerance", "day", "file", "words"])

    @property
    def is_laid_out(self) -> bool:
        """Whether it is known whose fields there are to be."""
        return bool(self.persons)

    @property
    def is_written(self) -> bool:
        return self.is_bound and self.data.get("do") == "write"

    @property
    def persons(self) -> list[str]:
        names = [name.strip()[:60] for name in (self.data.get("people") or "").split(",")]
        return list(dict.fromkeys(name for name in names if name))[:MOST_PEOPLE]

    def _count(self, name: str, most: int) -> int:
        text = self.data.get(name) or ""
        return min(int(text), most) if text.isascii() and text.isdigit() and len(text) < 4 else 0

    def _cells(self) -> Iterable[str]:
        parts, tries = self._count("parts", MOST_PARTS), self._count("tries", MOST_TRIES)
        for person in range(len(self.persons)):
            for k in range(1, tries + 1):
                yield from (f"v{person}-{k}-{part}" for part in range(1, parts + 1))

    @property
    def hands(self) -> list[OneHand]:
        """The fields as they are laid out: person by person, try by try, part by part."""
        found: list[OneHand] = []
        for number, person in enumerate(self.persons):
            rows: dict[int, list[Any]] = {}
            for name in (n for n in self._cells() if n.startswith(f"v{number}-")):
                rows.setdefault(int(name.split("-")[1]), []).append(self[name])
            found.append(OneHand(person, list(rows.items())))
        return found

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        people = given.get("people") or ""
        if people and len({name.strip() for name in people.split(",") if name.strip()}) > MOST_PEOPLE:
            self.add_error(
                "people", f"That is more than {MOST_PEOPLE}. Accepted: one to {MOST_PEOPLE} names."
            )
        if self.is_written:
            given["rows"] = self._of_file(given["file"]) if given.get("file") else self._typed(given)
        return given

    def _of_file(self, sent: UploadedFile) -> list[Try]:
        if sent.size and sent.size > LARGEST_FILE:
            self.add_error("file", f"It holds {sent.size} bytes. Accepted: at most {LARGEST_FILE}.")
            return []
        try:
            found = gauge_study_file.read(
                sent.read(), self.dimension, unit=self.data.get("unit", ""), name=str(sent.name)
            )
        except Unreadable as fault:
            self.add_error("file", fault.words)
            return []
        return [Try(*row) for row in found.rows]

    def _typed(self, given: dict[str, Any]) -> list[Try]:
        unit, rows = given.get("unit", ""), []
        for name in self._cells():
            person, trial, part = (int(word) for word in name[1:].split("-"))
            text = (given.get(name) or "").strip()
            if not text:
                self.add_error(name, "Missing: everybody measures every part as often. Accepted: a number.")
                continue
            typed = f"{text} {unit}" if unit and BARE_NUMBER.fullmatch(text) else text
            try:
                rows.append(Try(str(part), self.persons[person], trial, read(typed, self.dimension)))
            except NotAQuantity as fault:
                self.add_error(name, str(fault))
        return rows

    def studied(self) -> Studied:
        given = self.cleaned_data
        return Studied(
            what=given["what"],
            dimension=self.dimension,
            tries=given["rows"],
            day=given["day"],
            tolerance=given["tolerance"],
            words=given["words"],
        )


def _told(name: str, persons: list[str]) -> str:
    person, trial, part = (int(word) for word in name[1:].split("-"))
    return f"{persons[person]}, try {trial}, part {part}"
