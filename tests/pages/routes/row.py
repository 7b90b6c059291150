"""One line of the table of routes: an address, a method, and what each of the three people gets."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

SIGN_IN = 302
"""What a stranger gets almost everywhere: shown to the front door."""


def nothing(_: Any) -> dict[str, Any]:
    return {}


@dataclass(frozen=True)
class Row:
    """`address` gets the owner and gives the arguments of the address; `sent` what the form holds."""

    name: str
    method: str
    owner: int
    bench: int
    stranger: int = SIGN_IN
    address: Callable[[Any], dict[str, Any]] = nothing
    sent: Callable[[Any], dict[str, Any]] = field(default=nothing)

    def __str__(self) -> str:
        return f"{self.method} {self.name}"
