"""A moment of inertia: the method, what it asks for in turn; shown with its budget before it is written."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from spoolwright.bench import inertia, swing, swing_file
from spoolwright.bench.propagation import Known
from spoolwright.bench.swing import Swing
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.judgement import sheet_inertia
from spoolwright.pages.diary.ask import conditions
from spoolwright.pages.diary.ask.inertia_fields import BY_HAND, KnownField, timing_field
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.signal_file import FILE, LABELS, SignalForm
from spoolwright.pages.diary.ask.taken_with import FIELD, TakenWith
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told import pictures, readings
from spoolwright.pages.gathered import inertia as told_inertia
from spoolwright.sheets import inertia_methods, reading_kinds
from spoolwright.sheets.inertia_methods import Method
from spoolwright.shop.questions import measured_inertia
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.kept_inertia import KeptInertia, inertia_of, kept_inertia

KEYS = reading_kinds.kind("spool_inertia").conditions


class MethodChooser(InkForm):
    """Not sent anywhere: the ways of finding an inertia, each leading to its own form."""

    what = "reading"
    title = "A moment of inertia: by which way?"
    template = "diary/ask/_inertia_methods.html"
    own_move = False
    own_files = False

    @property
    def methods(self) -> list[tuple[Method, str]]:
        return [(one, self.desk.way("inertia", method=one.id)) for one in inertia_methods.methods().values()]


class InertiaForm(SignalForm, TakenWith):
    what = "inertia"
    button = "Write the reading"
    template = "diary/ask/_inertia.html"
    way = "swing"
    of_instrument = (
        "The one it rests on most. What is known of it goes into the uncertainty of what it measured."
    )
    buttons = "diary/ask/_inertia_buttons.html"
    file_label = "A record of the swing, instead of timing it"
    file_hint = (
        "A CSV of time and angular velocity or angle, such as a phone’s gyroscope writes. Let it fall here; "
        "then the number of swings and their time may stay empty."
    )
    accepts = ".csv,.txt,.tsv,.dat,text/csv,text/plain"
    kept: KeptInertia | None = None

    def __init__(self, desk: Desk, method: Method, *, sent: bool = True) -> None:
        self.method = method
        self.title = f"The moment of inertia, by {method.title}"
        super().__init__(desk, sent=sent)

    def lay_out(self) -> None:
        if self.method.takes_record:
            super().lay_out()
        # A record can stand for the swings that were timed, so those fields may stay empty.
        timed = ("time", "swings") if self.method.takes_record else ()
        asks = {one.key: KnownField(one, required=one.key not in timed) for one in self.method.asks}
        self.offer_instruments()
        self.fields |= asks | conditions.fields(KEYS, self.desk.sheet)
        if any(one.dimension == "time" for one in self.method.asks):
            self.fields["timing"] = timing_field()
        if self.method.takes_record:
            self.ask_questions(self.questions)

    @property
    def measures(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(one.dimension for one in self.method.asks))

    @property
    def remembered_as(self) -> str:
        return f"inertia {self.method.id}"

    def offer_instruments(self) -> None:
        # What records a swing by itself is no use to a method that takes no record.
        self.way = "swing" if self.method.takes_record else ""
        super().offer_instruments()

    @property
    def cautions(self) -> tuple[str, ...]:  # type: ignore[override]
        return (self.method.caution,) if self.method.caution else ()

    @property
    def looks_at(self) -> tuple[str, ...]:  # type: ignore[override]
        """Whoever wants to see the result wants to hear what is missing for it."""
        own = tuple(one.key for one in self.method.asks)
        return (FILE, *LABELS, *own, *KEYS, "timing", FIELD, "__all__")

    @property
    def action(self) -> str:
        return self.desk.way("inertia", method=self.method.id)

    @property
    def keep(self) -> str:
        return f"{super().keep} {self.method.id}"

    @property
    def asked_fields(self) -> Sequence[Any]:
        return [self[one.key] for one in self.method.asks]

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in KEYS]

    @property
    def other_ways(self) -> str:
        return self.desk.way("inertia")

    def started(self) -> dict[str, Any]:
        return {"line": "off"} | conditions.started(self.desk, KEYS) | self.instrument_last_time()

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        written = conditions.as_fields(old.part.conditions)
        return super().started_again(old) | written | self.instrument_of(old)

    def read_signal(self, data: bytes, name: str, answers: Mapping[str, Any]) -> Any:
        record = swing_file.read(data, name=name)
        return swing.fit(record.time, record.signal)

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        recorded = self.read_file() if self.method.takes_record and self.file.last else None
        if not self._errors:
            self._work_out(given, recorded)
        return given

    def _work_out(self, given: Mapping[str, Any], recorded: Swing | None) -> None:
        try:
            read = inertia.read(self.method.id, self._inputs(given), recorded)
        except Unreadable as fault:
            self.add_error(None, fault.words)
            return
        self.kept = kept_inertia(self.method.id, read, recorded, self.by_sheet(given.get("line") == "on"))

    def _inputs(self, given: Mapping[str, Any]) -> dict[str, Known]:
        by_hand = given.get("timing") == BY_HAND
        return {key: self._known(key, by_hand) for key in self.fields if self._is_given(key, given)}

    def _is_given(self, key: str, given: Mapping[str, Any]) -> bool:
        return isinstance(self.fields[key], KnownField) and given.get(key) is not None

    def _known(self, key: str, by_hand: bool) -> Known:
        field = self.fields[key]
        assert isinstance(field, KnownField)
        own = self.tool and self.tool.row.dimension == field.asked.dimension
        tool = self.tool.measuring(field.asked.dimension) if self.tool and own else None
        return field.known(self[key].data, by_hand=by_hand, tool=tool)

    def by_sheet(self, line_on: bool) -> Measured | None:
        """What the reel's sheet says of the same spool."""
        if self.desk.sheet is None:
            return None
        return sheet_inertia.of_sheet(self.desk.sheet, line_on=line_on)[0]

    def conditions(self) -> dict[str, Any]:
        return conditions.given(self.cleaned_data, KEYS)

    @property
    def drawn(self) -> dict[str, Any] | None:
        if self.kept is None:
            return None
        kept, desk = self.kept, self.desk
        line_on = self.cleaned_data.get("line") == "on"
        before = [
            one
            for one in measured_inertia.of_reel(desk.visit)
            if one.line_on == line_on and (one.this_visit or not line_on)
        ]
        results = [readings.Result("spool_inertia", kept.inertia)]
        told = readings.told(results, self.conditions(), desk.tags, desk.system, "inertia")
        return {
            "chart": told_inertia.chart(kept, desk.system, before),
            "swing": told_inertia.swing_chart(kept, desk.system),
            "told": told,
            "said": (*told_inertia.in_words(kept, desk.system, before), told_inertia.mostly(kept)),
            "notes": kept.notes,
            "budget": pictures.budget_rows(kept.budget, desk.system),
        }


def form_of(desk: Desk) -> InkForm:
    """The form of the method that was chosen, or the list of them."""
    asked = desk.request.GET.get("method", "") or _written_before(desk)
    chosen = inertia_methods.methods().get(asked)
    return InertiaForm(desk, chosen) if chosen else MethodChooser(desk, sent=False)


def _written_before(desk: Desk) -> str:
    """The method of the reading that is written again here."""
    old = MethodChooser(desk, sent=False).old
    kept = inertia_of(old.part) if old and old.kind == "reading" else None
    return kept.method if kept else ""
