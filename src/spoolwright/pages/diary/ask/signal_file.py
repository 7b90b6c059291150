"""A gauge's file or a recording in a form: kept from the first moment, its open questions asked."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.bench import recording
from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable
from spoolwright.pages.diary.ask import kept_files
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.kept_files import KeptFiles
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.shop.questions import by_number

FILE = "signal"
LABELS = {
    "delimiter": "What stands between the columns",
    "decimal": "The decimal mark",
    "time_column": "The column of time",
    "force_column": "The column of the pull",
    "time_unit": "The unit of time",
    "force_unit": "The unit of the pull",
    "rate": "Samples a second",
}
SEVERAL = ("delimiter", "decimal", "time_unit", "force_unit", "time_column", "force_column")


class SignalForm(InkForm):
    """What forms with a signal share. `read_signal` turns bytes and answers into what can be drawn."""

    buttons = "diary/ask/_signal_buttons.html"
    file_label = "The file"
    file_hint = ""
    accepts = ""
    on_line = False
    """Whether a gauge on a serial line may fill this field."""
    records = 0
    """The most seconds that the page may record into this field; 0 where no sound is read."""

    def read_signal(self, data: bytes, name: str, answers: Mapping[str, Any]) -> Any:
        raise NotImplementedError

    def given_for(self) -> Mapping[str, Any]:
        """What else the reading needs, read from the fields that are sound so far."""
        return {}

    @cached_property
    def file(self) -> KeptFiles:
        if self.is_bound:
            return kept_files.keep(self.desk.request, FILE, photos_checked=False)
        own = self.old.part.attachment if self.old and self.old.kind == "reading" else None
        mine = own is not None and own.author_id == self.desk.hand.pk
        return KeptFiles(FILE, [own] if mine else [])

    @property
    def is_look(self) -> bool:
        """A file that came only now is drawn before it can be written."""
        return super().is_look or (self.is_bound and FILE in self.desk.request.FILES)

    @property
    def name(self) -> str:
        return self.file.last.original_name if self.file.last else ""

    def data_of_file(self) -> Any:
        """All of a text; of a recording where it lies, to be read from there piece by piece."""
        path = by_number.path_of(self.file.last)
        return path if self.records and recording.is_sound(path) else path.read_bytes()

    @cached_property
    def _readings(self) -> dict[tuple[tuple[str, Any], ...], Any]:
        return {}

    def _read_once(self, answers: Mapping[str, Any]) -> Any:
        """What the file says with these answers, or its refusal; once a request, for sound takes seconds."""
        key = tuple(sorted(answers.items()))
        if key not in self._readings:
            try:
                self._readings[key] = self.read_signal(self.data_of_file(), self.name, answers)
            except Unreadable as fault:
                self._readings[key] = fault
        if isinstance(self._readings[key], Unreadable):
            raise self._readings[key]
        return self._readings[key]

    @cached_property
    def questions(self) -> tuple[Question, ...]:
        """What the file does not say by itself, asked exactly; one answer may raise the next question."""
        found: dict[str, Question] = {}
        answered: dict[str, Any] = {}
        while self.is_bound and self.file.last:
            new = self._asks(answered)
            typed = {question.key: self._typed_answer(question) for question in new}
            if not new or found.keys() & typed.keys():
                break
            found |= {question.key: question for question in new}
            answered |= typed
            if None in typed.values():
                break
        return tuple(found.values())

    def _asks(self, answered: Mapping[str, Any]) -> tuple[Question, ...]:
        try:
            self._read_once(answered)
        except NeedsAnswer as needed:
            return needed.questions
        except Unreadable:
            return ()
        return ()

    def _typed_answer(self, question: Question) -> Any:
        """What was typed for a question, as far as it can be read at all."""
        try:
            return answer_field(question).clean(self.data.get(question.key)) or None
        except forms.ValidationError:
            return None

    def lay_out(self) -> None:
        # Only a place for its faults: the file itself is put away by kept_files.
        self.fields[FILE] = forms.FileField(required=False, label=self.file_label)

    def ask_questions(self, questions: Sequence[Question]) -> None:
        for question in questions:
            self.fields.setdefault(question.key, answer_field(question))

    @property
    def answer_fields(self) -> list[forms.BoundField]:
        return [self[key] for key in LABELS if key in self.fields]

    def answers(self) -> dict[str, Any]:
        given = {key: self.cleaned_data.get(key) for key in LABELS if key in self.fields}
        return {key: value for key, value in given.items() if value not in (None, "")}

    def read_file(self) -> Any:
        """What the file says, or None with the faults put where they belong."""
        for fault in self.file.faults:
            self.add_error(FILE, fault)
        if not self.file.last:
            if not self.file.faults:
                self.add_error(FILE, "No file came. Choose one, or let it fall here.")
            return None
        return self.guarded(lambda: self._read_once(self.answers()))

    def guarded(self, read: Callable[[], Any], field: str = FILE) -> Any:
        try:
            return read()
        except NeedsAnswer as needed:
            self.ask_questions(needed.questions)
            for question in needed.questions:
                if question.key not in self._errors:
                    self.add_error(question.key, f"{question.words} Accepted: {question.accepted}.")
        except Unreadable as fault:
            self.add_error(field, fault.words)
        return None


def answer_field(question: Question) -> forms.Field:
    """A question of the bench as a field: choices where it names them, else a number or words."""
    missing = {"required": f"{question.words} Accepted: {question.accepted}."}
    label = LABELS.get(question.key, question.words)
    if question.key == "rate":
        return RateField(label=label, help_text=question.words, error_messages=missing)
    if question.key in SEVERAL and ", " in question.accepted:
        choices = [(_value(question.key, word), word) for word in question.accepted.split(", ")]
        choices.insert(0, ("", "choose"))
        return forms.ChoiceField(
            label=label, help_text=question.words, choices=choices, error_messages=missing
        )
    return WordsField(label=label, help_text=question.words, max_length=60, error_messages=missing)


def _value(key: str, word: str) -> str:
    return word.split(" ")[0] if key.endswith("column") else word


class RateField(forms.CharField):
    """ "100 Hz" or "100" in, samples a second out."""

    def __init__(self, **kwargs: Any) -> None:
        box = forms.TextInput({"inputmode": "decimal", "autocomplete": "off"})
        super().__init__(widget=box, **kwargs)

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        if text in self.empty_values:
            return None
        try:
            bare = text.replace(",", ".").replace(".", "", 1).isdigit()
            return quantities.read(f"{text} Hz" if bare else text, "frequency")
        except quantities.NotAQuantity as fault:
            raise forms.ValidationError(str(fault)) from fault
