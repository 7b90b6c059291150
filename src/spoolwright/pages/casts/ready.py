"""The compiled cast: fetched in a second, made anew once on a machine, behind the page's back."""

from __future__ import annotations

from threading import Event, Lock, Thread

PATIENCE = 1.0
"""Seconds that a page waits for it before it is sent without its answer."""

_lock, _done = Lock(), Event()
_thread: list[Thread] = []


def is_ready(patience: float = PATIENCE) -> bool:
    """Whether a cast can be worked out now; the first to ask sets it going."""
    with _lock:
        if not _thread:
            _thread.append(Thread(target=_warm, name="casts", daemon=True))
            _thread[0].start()
    return _done.wait(patience)


def _warm() -> None:
    from spoolwright.mechanics import cast

    cast.warm()
    _done.set()
