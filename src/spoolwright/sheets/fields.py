"""The kinds of field a reel sheet has: a quantity as text, a known name, a bearing's three sizes."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Annotated, Any

from pydantic import Field, GetCoreSchemaHandler, GetJsonSchemaHandler, StringConstraints
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from spoolwright.quantities import DIMENSIONS, NotAQuantity, read, show
from spoolwright.sheets import lubricants, materials


def refused(what: str, accepted: str) -> PydanticCustomError:
    """A field's refusal that carries what is accepted beside what was wrong."""
    return PydanticCustomError("refused", "{what}", {"what": what, "accepted": accepted})


@dataclass(frozen=True)
class Quantity:
    """A quantity as text with its unit; SI inside. `low` itself is excluded unless `zero`."""

    dimension: str
    low: float
    high: float
    zero: bool = False

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self.read)

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        kind = DIMENSIONS[self.dimension]
        text = {"type": "string", "description": self.accepted, "examples": list(kind.examples)}
        return {"anyOf": [{"type": "number"}, text]} if kind.plain else text

    def read(self, typed: Any) -> float:
        value = self._value(typed)
        above = value >= self.low if self.zero else value > self.low
        if not (above and value <= self.high):
            raise refused(f"{_quoted(typed)} is out of range", self.accepted)
        return value

    def _value(self, typed: Any) -> float:
        kind = DIMENSIONS[self.dimension]
        if kind.plain and isinstance(typed, (int, float)) and not isinstance(typed, bool):
            return float(typed)
        try:
            return read(typed, self.dimension)
        except NotAQuantity as fault:
            raise refused(f"{_quoted(typed)} {fault.reason}", self.accepted) from None

    @property
    def accepted(self) -> str:
        least = "at least" if self.zero else "more than"
        ends = (show(self.low, self.dimension), show(self.high, self.dimension))
        return f"{DIMENSIONS[self.dimension].accepted}, {least} {ends[0]}, at most {ends[1]}"


@dataclass(frozen=True)
class Known:
    """A name from a closed list; a near miss is answered with the nearest name."""

    noun: str
    names: Callable[[], tuple[str, ...]]

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self.read)

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        return {"type": "string", "enum": list(self.names())}

    def read(self, typed: Any) -> str:
        names = self.names()
        if typed in names:
            return str(typed)
        near = nearest(str(typed), names)
        hint = f"; nearest is “{near}”" if near else ""
        raise refused(f"{_quoted(typed)} is not a known {self.noun}{hint}", ", ".join(names))


@dataclass(frozen=True)
class BearingSize:
    """A bearing's boundary dimensions in metres."""

    bore: float
    outer: float
    width: float

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(cls.read)

    @classmethod
    def __get_pydantic_json_schema__(
        cls, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        return {"type": "string", "description": _SIZE_ACCEPTED, "examples": ["3 x 10 x 4 mm"]}

    @classmethod
    def read(cls, typed: Any) -> BearingSize:
        found = _SIZE.fullmatch(typed.strip()) if isinstance(typed, str) and len(typed) < 60 else None
        if found is None:
            raise refused(f"{_quoted(typed)} is not a bearing size", _SIZE_ACCEPTED)
        try:
            sizes = [read(f"{number} {found['unit']}", "length") for number in found.group("a", "b", "c")]
        except NotAQuantity as fault:
            raise refused(f"{_quoted(typed)} {fault.reason}", _SIZE_ACCEPTED) from None
        size = cls(*sizes)
        if not 0 < size.bore < size.outer or not 0 < size.width < size.outer:
            raise refused(f"{_quoted(typed)} has a bore or a width that does not go into it", _SIZE_ACCEPTED)
        return size


_SIZE = re.compile(r"(?P<a>[0-9.,/ ]+)[xX×](?P<b>[0-9.,/ ]+)[xX×](?P<c>[0-9.,/ ]+?) ?(?P<unit>[a-z]+)")
_SIZE_ACCEPTED = 'bore x outer x width with one unit, such as "3 x 10 x 4 mm"; bore less than outer'


def nearest(word: str, names: tuple[str, ...]) -> str | None:
    """The name that was probably meant, or None."""
    folded = {name.casefold(): name for name in names}
    close = get_close_matches(word.casefold(), list(folded), n=1, cutoff=0.5)
    return folded[close[0]] if close else None


def _quoted(typed: Any) -> str:
    text = str(typed)
    return f"“{text if len(text) <= 40 else text[:39] + '…'}”"


Length = Annotated[float, Quantity("length", 0.0, 0.5)]
LengthOrZero = Annotated[float, Quantity("length", 0.0, 0.5, zero=True)]
Mass = Annotated[float, Quantity("mass", 0.0, 10.0)]
Inertia = Annotated[float, Quantity("inertia", 0.0, 0.1)]
Angle = Annotated[float, Quantity("angle", 0.0, 1.5708, zero=True)]
Pull = Annotated[float, Quantity("force", 0.0, 2000.0)]
Stiffness = Annotated[float, Quantity("stiffness", 0.0, 1e7)]
MagnetDrag = Annotated[float, Quantity("viscous_drag", 0.0, 1e-2)]
Torque = Annotated[float, Quantity("torque", 0.0, 50.0)]
Modulus = Annotated[float, Quantity("pressure", 1e6, 1e12)]
Friction = Annotated[float, Quantity("ratio", 0.0, 1.0)]
Turns = Annotated[float, Quantity("ratio", 0.0, 40.0)]
Material = Annotated[str, Known("material", materials.structural_names)]
WasherMaterial = Annotated[str, Known("material", materials.washer_names)]
Lubricant = Annotated[str, Known("house oil or grease", lubricants.names)]
Words = Annotated[
    str,
    StringConstraints(strip_whitespace=True, min_length=1, max_length=200),
    Field(description="text of 1 to 200 characters"),
]
Note = Annotated[
    str,
    StringConstraints(strip_whitespace=True, max_length=2000),
    Field(description="text of at most 2000 characters"),
]
Slug = Annotated[
    str,
    StringConstraints(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60),
    Field(description='small letters, digits and single hyphens, such as "tarvak-58r"'),
]
