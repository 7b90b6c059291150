"""What is wrong with a sheet, said so that it can be put right: where, what, and what is accepted."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any, Literal, get_args, get_origin

from pydantic import BaseModel, ValidationError

from spoolwright.sheets.fields import Known, nearest

_LINE = re.compile(r"^(?P<what>.*?) ?\(at line (?P<line>\d+), column (?P<column>\d+)\)$")
_TOML = 'TOML: tables in [brackets], then key = "24.5 mm", whole numbers bare'


@dataclass(frozen=True)
class Fault:
    """One thing to put right. Members of a list are counted from 1: "drag.stack[3].outer_diameter"."""

    where: str
    what: str
    accepted: str

    def __str__(self) -> str:
        return f"{self.where}: {self.what}. Accepted: {self.accepted}."


class SheetFault(ValueError):
    """A reel sheet that cannot be used; every fault found is listed."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(str(fault) for fault in self.faults))


def broken_toml(error: ValueError) -> Fault:
    """A TOML syntax error as a fault that names the line."""
    text = str(error) if isinstance(error, tomllib.TOMLDecodeError) else "cannot be read as TOML"
    found = _LINE.match(text)
    if found is None:
        return Fault("end of the file" if "end of document" in text else "the file", _plain(text), _TOML)
    return Fault(f"line {found['line']}, column {found['column']}", _plain(found["what"]), _TOML)


def _plain(text: str) -> str:
    text = text.removesuffix(" (at end of document)")
    return text[:1].lower() + text[1:]


def from_validation(error: ValidationError, model: type[BaseModel], data: Any) -> tuple[Fault, ...]:
    """Every complaint of the model in our words, in the order of the sheet."""
    return tuple(_fault(dict(complaint), model, data) for complaint in error.errors(include_url=False))


def _fault(complaint: dict[str, Any], model: type[BaseModel], data: Any) -> Fault:
    place = complaint["loc"]
    what, accepted = _words(complaint, model)
    return Fault(where(place, data), what, accepted)


def _words(complaint: dict[str, Any], model: type[BaseModel]) -> tuple[str, str]:
    context, typed, place = complaint.get("ctx", {}), complaint.get("input"), complaint["loc"]
    kind = complaint["type"]
    if kind == "refused":
        return context["what"], context["accepted"]
    if kind == "missing":
        return "is missing", _accepted_at(model, place)
    if kind == "extra_forbidden":
        keys = _keys_at(model, place[:-1])
        near = nearest(str(place[-1]), keys)
        return "is not a key of this table" + (f"; nearest is “{near}”" if near else ""), ", ".join(keys)
    if kind == "literal_error":
        near = nearest(str(typed), tuple(re.findall(r"'([^']*)'", context["expected"])))
        hint = f"; nearest is “{near}”" if near else ""
        return f"{_shown(typed)} is not one of the accepted words{hint}", context["expected"]
    return f"{_shown(typed)} is refused", _accepted_at(model, place)


def where(place: tuple[Any, ...], data: Any) -> str:
    """ "drag.stack[3].outer_diameter (eared disc)": a member of a list goes by number and by its name."""
    text, name = "", ""
    for step in place:
        data = _inside(data, step)
        text += f"[{step + 1}]" if isinstance(step, int) else f".{step}" if text else str(step)
        if isinstance(step, int) and isinstance(data, dict):
            name = str(data.get("name") or data.get("place") or "")[:60]
    return f"{text} ({name})" if name else text or "the sheet"


def _inside(data: Any, step: Any) -> Any:
    try:
        return data[step]
    except (KeyError, IndexError, TypeError):
        return None


def _shown(typed: Any) -> str:
    if isinstance(typed, (dict, list)):
        return "a table" if isinstance(typed, dict) else "a list"
    text = str(typed)
    return f"“{text[:40]}”"


def _model_at(model: type[BaseModel], place: tuple[Any, ...]) -> type[BaseModel] | None:
    """The table's class at this place: lists are stepped through, optional tables are unwrapped."""
    for step in place:
        if isinstance(step, int):
            continue
        field = model.model_fields.get(str(step))
        inner = _table_in(field.annotation) if field else None
        if inner is None:
            return None
        model = inner
    return model


def _table_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    inside = (_table_in(part) for part in getattr(annotation, "__args__", ()))
    return next((found for found in inside if found is not None), None)


def _keys_at(model: type[BaseModel], place: tuple[Any, ...]) -> tuple[str, ...]:
    found = _model_at(model, place)
    return tuple(found.model_fields) if found else ()


def _accepted_at(model: type[BaseModel], place: tuple[Any, ...]) -> str:
    """What a key should hold, from the key's own description of itself."""
    while place and isinstance(place[-1], int):
        place = place[:-1]
    owner = _model_at(model, place[:-1])
    field = owner.model_fields.get(str(place[-1])) if owner and place else None
    if field is None:
        return "a table of keys"
    told = next(_descriptions(field, field.annotation), None)
    if told is not None:
        return told
    inner = _table_in(field.annotation)
    needed = [name for name, part in inner.model_fields.items() if part.is_required()] if inner else []
    return f"a table [{'.'.join(str(step) for step in place)}] with {', '.join(needed)}"


def _descriptions(*marks: Any) -> Iterator[str]:
    """Every sentence that a type says about itself, the outermost first."""
    for mark in marks:
        if isinstance(getattr(mark, "accepted", None), str):
            yield mark.accepted
        if isinstance(mark, Known):
            yield ", ".join(mark.names())
        if getattr(mark, "description", None):
            yield mark.description
        if get_origin(mark) is Literal:
            yield ", ".join(str(choice) for choice in get_args(mark))
        elif not isinstance(mark, str):
            inside = (*getattr(mark, "metadata", ()), *getattr(mark, "__metadata__", ()), *get_args(mark))
            yield from _descriptions(*inside)
