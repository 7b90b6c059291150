"""What time it is in the shop. The demo and the tests set it; nothing else may."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from datetime import date, datetime

from django.utils import timezone

_set_to: ContextVar[datetime | None] = ContextVar("shop_clock", default=None)


def now() -> datetime:
    return _set_to.get() or timezone.now()


def today() -> date:
    """The day in the shop's own time zone."""
    return timezone.localtime(now()).date()


@contextmanager
def as_of(moment: datetime) -> Iterator[None]:
    """Everything written inside carries this moment; for eight months of demo, and for tests of time."""
    before = _set_to.set(moment)
    try:
        yield
    finally:
        _set_to.reset(before)
