"""Do several things at the same moment, each in a thread with a connection of its own."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier
from typing import Any

from django.db import connections


def at_once(things: Sequence[Callable[[], Any]]) -> list[Any]:
    """What each of them returned or raised, in their order."""
    gate = Barrier(len(things))

    def do(thing: Callable[[], Any]) -> Any:
        try:
            gate.wait()
            return thing()
        except Exception as raised:  # noqa: BLE001 - what a thread raised is its result here
            return raised
        finally:
            connections.close_all()

    with ThreadPoolExecutor(len(things)) as threads:
        return list(threads.map(do, things))
