"""The compiled cast behind the page's back."""

from __future__ import annotations

from threading import Event, Lock

import pytest

from spoolwright.pages.casts import ready


def test_the_first_to_ask_sets_it_going_and_waits_no_longer_than_its_patience(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    let_go, begun = Event(), []
    monkeypatch.setattr(ready, "_lock", Lock())
    monkeypatch.setattr(ready, "_done", Event())
    monkeypatch.setattr(ready, "_thread", [])
    monkeypatch.setattr(ready, "_warm", lambda: (begun.append(1), let_go.wait(10), ready._done.set()))
    assert not ready.is_ready(patience=0.01)
    assert not ready.is_ready(patience=0.01)
    let_go.set()
    assert ready.is_ready(patience=10.0)
    assert begun == [1]
