"""The decoder as a program of its own: what it sends, how it ends, what it may use."""

import io
import json
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

from spoolwright.bench import decoder
from tests.encoded import RATE, clicks, encode

SOUND = clicks(2.0, (0.5, 1.5))


def sent(path: Path, container: str) -> tuple[list[dict[str, object]], bytes]:
    out = io.BytesIO()
    decoder.write(out, str(path), container)
    out.seek(0)
    heads, body = [], b""
    while line := out.readline():
        heads.append(json.loads(line))
        body += out.read(heads[-1].get("bytes", 0))
    return heads, body


def test_pieces_come_with_what_they_are_and_the_end_says_how_it_went(tmp_path: Path) -> None:
    path = tmp_path / "x.flac"
    path.write_bytes(encode("flac", np.stack([SOUND, SOUND])))
    heads, body = sent(path, "flac")
    assert {(h["rate"], h["channels"], h["form"]) for h in heads[:-1]} == {(RATE, 2, "s16")}
    assert len(body) == 2 * 2 * len(SOUND)
    assert heads[0]["at"] == 0.0
    assert heads[-1] == {"tracks": 1, "claimed": 2.0, "faults": 0, "why": "", "ended": "read"}


def test_a_wrong_container_is_not_guessed(tmp_path: Path) -> None:
    path = tmp_path / "x.flac"
    path.write_bytes(encode("flac", SOUND))
    heads, body = sent(path, "mov")
    assert (heads[0]["ended"], body) == ("not opened", b"")


@pytest.mark.parametrize("listed", ["#EXTM3U\n{there}\n", "ffconcat version 1.0\nfile '{there}'\n"])
def test_a_file_that_points_to_others_opens_none_of_them(tmp_path: Path, listed: str) -> None:
    (tmp_path / "x.flac").write_bytes(encode("flac", SOUND))
    (tmp_path / "list").write_text(listed.format(there=tmp_path / "x.flac"))
    for container in ("mp3", "mov", "ogg", "matroska"):
        heads, body = sent(tmp_path / "list", container)
        assert heads[-1]["ended"] != "read" or not body


def test_a_reader_that_has_gone_is_no_fault(tmp_path: Path) -> None:
    class Gone(io.BytesIO):
        def write(self, data: object) -> int:
            raise BrokenPipeError

    (tmp_path / "x.flac").write_bytes(encode("flac", SOUND))
    decoder.write(Gone(), str(tmp_path / "x.flac"), "flac")


@pytest.mark.skipif(sys.platform == "win32", reason="Windows knows no such limits")
def test_it_holds_itself_to_its_limits() -> None:
    code = (
        f"import runpy, resource as r; m = runpy.run_path({decoder.__file__!r}); m['limit_self']();"
        "print(r.getrlimit(r.RLIMIT_CPU)[0], r.getrlimit(r.RLIMIT_FSIZE)[0])"
    )
    done = subprocess.run([sys.executable, "-I", "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == [str(decoder.CAP_SECONDS), "0"]
