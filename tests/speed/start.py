"""How long a second start takes until the server answers, beside a first one: one run, one table.

Run it by hand, on a machine that does nothing else: `python tests/speed/start.py`. The aim is a second start
under three seconds. It asserts nothing, because a busy machine is no fault of the program.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
import time
from http.client import HTTPConnection
from pathlib import Path

RUNS = 5


def seconds_until_it_answers(data: Path) -> float:
    """From the command to the first answer, for a shop without the demo."""
    own = {k: v for k, v in os.environ.items() if not k.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    words = [
        sys.executable,
        "-m",
        "spoolwright.command",
        "serve",
        "--no-browser",
        "--empty",
        "--data",
        str(data),
    ]
    began = time.perf_counter()
    process = subprocess.Popen(words, env=own, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    try:
        assert process.stdout
        for line in process.stdout:
            if link := re.search(r"http://127\.0\.0\.1:(\d+)/sign-in/", line):
                door = HTTPConnection("127.0.0.1", int(link[1]), timeout=30)
                door.request("GET", "/here/")
                door.getresponse().read()
                return time.perf_counter() - began
        raise SystemExit("the server ended before it answered")
    finally:
        process.terminate()
        process.wait(timeout=20)


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        data = Path(folder) / "data"
        first = seconds_until_it_answers(data)
        again = sorted(seconds_until_it_answers(data) for _ in range(RUNS))
    print(f"first start, no demo   {first:5.2f} s")  # noqa: T201
    print(f"second start, median   {again[RUNS // 2]:5.2f} s   {again[RUNS // 2] / first:.2f} of the first")  # noqa: T201
    print(f"second start, slowest  {again[-1]:5.2f} s")  # noqa: T201


if __name__ == "__main__":
    main()
