"""What a hand may change of the options: works in or out, minutes, prices of parts, lines, the setting."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from django import forms
from django.forms.boundfield import BoundField

from spoolwright.judgement.job_price import OPENS, part_selling
from spoolwright.judgement.option_works import fitting
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_case import Around
from spoolwright.judgement.quote_options import TITLES, Changes
from spoolwright.judgement.work_words import changes
from spoolwright.judgement.works import PartNeeded, Work
from spoolwright.pages.quote.desk import Desk
from spoolwright.pages.words.asked import MoneyField, QuantityField, ask_in
from spoolwright.sheets.drag_setting import DragSetting, setting_of

LINE_KINDS = (
    ("other", "something else"),
    ("labour", "work by the hour"),
    ("part", "a part"),
    ("discount", "taken off"),
)
MOST_LINES = 6

WITHIN = {
    "radius": (1e-3, 0.5, "1 mm to 500 mm, such as 23.5 mm"),
    "wanted_pull": (0.01, 5000.0, "a pull above nothing, such as 2.7 kg"),
    "line_strength": (0.01, 5000.0, "a strength above nothing, such as 10 kg"),
    "star_turns": (0.0, 100.0, "0 to 100 turns, such as 2.5"),
}
"""What a reel can have at all, SI, and how it is said."""

SHORT = {"put right": "put right", "improve": "improve", "most": "the most", "extra": "ask for it"}
"""The options beside a tick."""


@dataclass(frozen=True)
class PartRow:
    """A part that a work takes, with the field for its price."""

    part: PartNeeded
    field: BoundField


@dataclass(frozen=True)
class WorkRow:
    """One work: a tick for each option, its minutes, its parts, what it changes; `proposed` by judgement."""

    work: Work
    ticks: tuple[tuple[str, str, str, bool], ...]
    minutes: BoundField
    parts: tuple[PartRow, ...]
    proposed: bool
    changes: tuple[str, ...]


@dataclass(frozen=True)
class LineRow:
    """A line that somebody adds, with the options it goes into."""

    what: BoundField
    sum: BoundField
    kind: BoundField
    goes_in: tuple[tuple[str, str, str, bool], ...]


class WorksForm(forms.Form):
    """Built for one desk; `choice(i)` is what the hand has chosen for the i-th option."""

    def __init__(self, data: Any, desk: Desk) -> None:
        super().__init__(data)
        self.desk = desk
        self.works = fitting(desk.case)
        self.opened = any(work.id == OPENS for way in desk.ways for work in way.works) or desk.is_extra
        self.keys = tuple(way.key for way in desk.ways)
        self._ask_around()
        self._ask_works()
        self.line_count = self._count_lines(data)
        for number in range(self.line_count):
            self._ask_line(number)
        ask_in(self, desk.system, desk.shop)

    def _ask_around(self) -> None:
        around = self.desk.case.around
        self.fields["posted"] = forms.BooleanField(
            label="It goes home by post", required=False, initial=around.posted
        )
        self.fields["used_value"] = MoneyField(
            label="What it would fetch used", required=False, initial=around.used_price_minor
        )
        self.fields["line_strength"] = QuantityField(
            "force", label="Strength of the line on it", required=False, help_text="Such as 10 kg or 22 lb."
        )
        if self.has_drag:
            self._ask_setting()

    def _ask_setting(self) -> None:
        setting = setting_of(self.desk.sheet)
        self.fields["wanted_pull"] = QuantityField(
            "force",
            label="A pull that the customer wants",
            required=False,
            help_text=f"Then each option says how far the {setting.control} gives it.",
        )
        self.fields["radius"] = QuantityField(
            "length",
            label="Pulls are promised where the line leaves at a radius of",
            initial=self._radius(),
        )
        self.fields["star_turns"] = forms.FloatField(
            label=_promised_at(setting),
            initial=self._star(),
            min_value=0.0,
            widget=forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}),
        )

    def _ask_works(self) -> None:
        choices = [(work.id, work.title) for work in self.works]
        for number, way in enumerate(self.desk.ways):
            self.fields[f"offer_{number}"] = forms.BooleanField(
                label="Offer this one", required=False, initial=bool(way.works)
            )
            self.fields[f"works_{number}"] = forms.MultipleChoiceField(
                label=TITLES[way.key], choices=choices, required=False, initial=[w.id for w in way.works]
            )
        for work in self.works:
            self.fields[f"minutes_{work.id}"] = forms.IntegerField(
                label=f"Minutes for: {work.title.lower()}",
                min_value=0,
                max_value=999,
                initial=self.own_minutes(work),
                widget=forms.TextInput({"inputmode": "numeric", "autocomplete": "off"}),
            )
            for place, part in enumerate(work.parts):
                self.fields[f"price_{work.id}_{place}"] = MoneyField(
                    label=f"Price of one {part.name}", initial=self.own_price(part)
                )

    def _ask_line(self, number: int) -> None:
        self.fields[f"line_{number}_what"] = forms.CharField(
            label="A line besides", max_length=200, required=False
        )
        self.fields[f"line_{number}_sum"] = MoneyField(label="Its sum", required=False)
        self.fields[f"line_{number}_kind"] = forms.ChoiceField(
            label="What it is", choices=LINE_KINDS, required=False, initial="other"
        )
        places = [(str(i), TITLES[key]) for i, key in enumerate(self.keys)]
        self.fields[f"line_{number}_in"] = forms.MultipleChoiceField(
            label="In", choices=places, required=False, initial=[place for place, _ in places]
        )

    def _count_lines(self, data: Any) -> int:
        """As many as are filled in, and an empty one."""
        filled = [n for n in range(MOST_LINES) if data and (data.get(f"line_{n}_what") or "").strip()]
        return min(max(filled, default=-1) + 2, MOST_LINES)

    @property
    def has_drag(self) -> bool:
        return self.desk.sheet is not None and self.desk.sheet.drag is not None

    def _radius(self) -> float:
        pull = self.desk.latest("pull_full") or self.desk.latest("pull_run")
        sheet = self.desk.sheet
        full = sheet.spool.full_radius if sheet else 0.0
        return (pull.number("radius") if pull else None) or full

    def _star(self) -> float:
        ratio, sheet = self.desk.latest("start_up_ratio"), self.desk.sheet
        half = sheet.drag.turns_to_full / 2 if sheet and sheet.drag else 0.0
        found = ratio.number("star_turns") if ratio else None
        return half if found is None else found

    def own_minutes(self, work: Work) -> int:
        """Minutes by the shop's book, in a reel that lies stripped where an option strips it."""
        return self.desk.case.minutes(work, opened=self.opened)

    def own_price(self, part: PartNeeded) -> int:
        return part_selling(part, self.desk.rates)

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or {}
        for name, (least, most, accepted) in WITHIN.items():
            value = cleaned.get(name)
            if value is not None and not least <= value <= most:
                self.add_error(name, f"No reel has that. Accepted: {accepted}.")
        for n in range(self.line_count):
            what, amount = cleaned.get(f"line_{n}_what"), cleaned.get(f"line_{n}_sum")
            if what and amount is None and f"line_{n}_sum" not in self.errors:
                self.add_error(f"line_{n}_sum", "This line has words and no sum. Accepted: 180 kr.")
            if amount is not None and not what:
                self.add_error(f"line_{n}_what", "This line has a sum and no words: what is it for?")
        return cleaned

    def told(self, name: str) -> Any:
        """What was typed, where it can be read; else what the form began with."""
        if self.is_bound:
            self.errors  # noqa: B018  (asks the form to read itself)
            if name in self.cleaned_data:
                return self.cleaned_data[name]
            if name in self.errors:
                return self.fields[name].initial
        return self.fields[name].initial if name in self.fields else None

    def is_offered(self, number: int) -> bool:
        return bool(self.told(f"offer_{number}"))

    def chosen(self, number: int) -> tuple[Work, ...]:
        ticked = set(self.told(f"works_{number}") or ())
        return tuple(work for work in self.works if work.id in ticked)

    def around(self) -> Around:
        return replace(
            self.desk.case.around,
            posted=bool(self.told("posted")),
            used_price_minor=self.told("used_value"),
            line_strength=self.told("line_strength"),
        )

    def changes(self, number: int) -> Changes:
        """Only what differs from the list counts as changed: the list has other minutes for a closed reel."""
        works = self.chosen(number)
        minutes = {work.id: self.told(f"minutes_{work.id}") for work in works}
        changed = {
            work.id: minutes[work.id]
            for work in works
            if minutes[work.id] is not None and minutes[work.id] != self.own_minutes(work)
        }
        return Changes(changed, dict(self._changed_prices(works)), tuple(self._lines(number)))

    def _changed_prices(self, works: Iterable[Work]) -> Iterable[tuple[str, int]]:
        for work in works:
            for place, part in enumerate(work.parts):
                asked = self.told(f"price_{work.id}_{place}")
                if asked is not None and asked != self.own_price(part):
                    yield part.name, asked

    def _lines(self, number: int) -> Iterable[Charge]:
        for n in range(self.line_count):
            what, amount = self.told(f"line_{n}_what"), self.told(f"line_{n}_sum")
            if what and amount is not None and str(number) in (self.told(f"line_{n}_in") or ()):
                kind = self.told(f"line_{n}_kind") or "other"
                yield Charge(kind, what, -amount if kind == "discount" else amount, Fraction(1))

    @property
    def proposed_rows(self) -> list[WorkRow]:
        return [row for row in self._rows() if row.proposed]

    @property
    def other_rows(self) -> list[WorkRow]:
        return [row for row in self._rows() if not row.proposed]

    def _rows(self) -> list[WorkRow]:
        shown = {work.id for way in self.desk.ways for work in way.works}
        shown |= {work.id for number in range(len(self.keys)) for work in self.chosen(number)}
        return [self._row(work, work.id in shown) for work in self.works]

    def _row(self, work: Work, proposed: bool) -> WorkRow:
        ticks = tuple(
            (f"works_{n}", work.id, SHORT[key], work.id in [w.id for w in self.chosen(n)])
            for n, key in enumerate(self.keys)
        )
        parts = tuple(
            PartRow(part, self[f"price_{work.id}_{place}"]) for place, part in enumerate(work.parts)
        )
        told = changes(work, self.desk.system)
        return WorkRow(work, ticks, self[f"minutes_{work.id}"], parts, proposed, told)

    @property
    def line_rows(self) -> list[LineRow]:
        return [self._line_row(n) for n in range(self.line_count)]

    def _line_row(self, n: int) -> LineRow:
        chosen = self.told(f"line_{n}_in") or ()
        goes_in = tuple(
            (f"line_{n}_in", str(i), SHORT[key], str(i) in chosen) for i, key in enumerate(self.keys)
        )
        fields = (self[f"line_{n}_{name}"] for name in ("what", "sum", "kind"))
        return LineRow(*fields, goes_in)

    @property
    def has_lines(self) -> bool:
        return self.line_count > 1 or any(name.startswith("line_") for name in self.errors)

    @property
    def setting_fields(self) -> list[BoundField]:
        return [self[name] for name in ("wanted_pull", "radius", "star_turns") if name in self.fields]


def _promised_at(setting: DragSetting) -> str:
    if setting.is_lever:
        return "Start over run is promised with the lever so far on its way (0.5 is half way)"
    return f"Start over run is promised with the {setting.control} so many turns from free"
