"""One published value: what it is, what the house gets, what was printed, where, and how it was come by.

`how` says whether the source was opened, or its value recalled from memory, or worked out by another
library. `within` is the source's own rounding (absolute) unless a wider one is explained beside it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import pytest


@dataclass(frozen=True)
class Published:
    what: str
    ours: Callable[[], Any]
    printed: float
    within: float
    source: str
    how: str

    def agrees(self) -> None:
        got = float(self.ours())
        assert abs(got - self.printed) <= self.within, (
            f"{self.what}: got {got:.8g}, printed {self.printed:.8g} within {self.within:g}; "
            f"{self.source} ({self.how})"
        )


def each(checks: Sequence[Published]) -> pytest.MarkDecorator:
    """Run a test once for each check, under its own name."""
    assert all(check.source and check.how for check in checks)
    return pytest.mark.parametrize("check", checks, ids=[check.what for check in checks])
