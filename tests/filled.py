"""One shop filled with the demonstration, for all tests that only look at it, whatever worker runs them."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

LONGEST = 300  # s


@dataclass(frozen=True)
class FilledShop:
    """The folder of its data, and what the command said while it filled it."""

    data: Path
    returncode: int
    stdout: str
    stderr: str

    @property
    def database(self) -> Path:
        return self.data / "shop.sqlite3"


def command(data: Path, *more: str) -> subprocess.CompletedProcess[str]:
    """`spoolwright demo`, in a process of its own, as somebody types it."""
    env = {key: value for key, value in os.environ.items() if not key.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    words = [sys.executable, "-m", "spoolwright.command", "demo", "--data", str(data), *more]
    return subprocess.run(words, capture_output=True, text=True, env=env, timeout=LONGEST, check=False)


@pytest.fixture(scope="session")
def filled_shop(tmp_path_factory: pytest.TempPathFactory) -> FilledShop:
    """Filled by the first who asks; the other workers wait for it. Nobody writes into it: take a copy."""
    below = tmp_path_factory.getbasetemp()
    if os.environ.get("PYTEST_XDIST_WORKER"):
        below = below.parent
    data, said = below / "filled", below / "filled.json"
    try:
        data.mkdir()
    except FileExistsError:
        _wait_for(said)
    else:
        done = command(data)
        half = said.with_suffix(".half")
        half.write_text(json.dumps([done.returncode, done.stdout, done.stderr]), encoding="utf-8")
        half.rename(said)
    return FilledShop(data, *json.loads(said.read_text(encoding="utf-8")))


def _wait_for(said: Path) -> None:
    last = time.monotonic() + LONGEST
    while not said.exists():
        assert time.monotonic() < last, "the worker that fills the shop never came to its end"
        time.sleep(0.2)
