"""A gauge at the far end of a pseudo-terminal: sends, is asked, is unplugged."""

from __future__ import annotations

import contextlib
import os
import threading
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import pytest

from spoolwright.shop.errands import gauge_port


@dataclass
class FakeGauge:
    """`name` is the port that the program opens."""

    master: int
    name: str
    open: list[int] = field(default_factory=list)

    def sends(self, text: bytes) -> None:
        os.write(self.master, text)

    def speaks_when_opened(
        self, monkeypatch: pytest.MonkeyPatch, text: bytes, unplugged: float = 0.0
    ) -> None:
        """Sends once the port is open, because what came before is not read; then, if told, is unplugged."""
        usual = gauge_port.open_port

        def opened(*words: Any) -> Any:
            port = usual(*words)
            self.sends(text)
            if unplugged:
                threading.Timer(unplugged, self.is_unplugged).start()
            return port

        monkeypatch.setattr(gauge_port, "open_port", opened)

    def hears(self) -> bytes:
        return os.read(self.master, 100)

    def is_unplugged(self) -> None:
        for end in self.open:
            os.close(end)
        self.open.clear()


@contextlib.contextmanager
def plugged_in() -> Iterator[FakeGauge]:
    """Skips the test where there are no pseudo-terminals (Windows)."""
    pytest.importorskip("termios", reason="this system has no pseudo-terminals")
    import tty

    master, slave = os.openpty()
    tty.setraw(slave)
    fake = FakeGauge(master, os.ttyname(slave), [master, slave])
    try:
        yield fake
    finally:
        with contextlib.suppress(OSError):
            fake.is_unplugged()
