"""Opening the shop's data folder."""

import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from spoolwright.command.house import answer_to, keep_compiled, make_secret_key, usual_folder, warm_up


def test_the_secret_key_is_made_once_and_readable_by_nobody_else(tmp_path: Path) -> None:
    make_secret_key(tmp_path)
    kept = tmp_path / "secret-key"
    first = kept.read_text()
    make_secret_key(tmp_path)
    assert kept.read_text() == first
    assert len(first) >= 64
    if os.name != "nt":
        assert stat.S_IMODE(kept.stat().st_mode) == 0o600


def test_two_shops_have_two_keys(tmp_path: Path) -> None:
    for name in "ab":
        (tmp_path / name).mkdir()
        make_secret_key(tmp_path / name)
    assert (tmp_path / "a" / "secret-key").read_text() != (tmp_path / "b" / "secret-key").read_text()


def test_names_to_answer_to_are_added_to_those_that_were_set(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SPOOLWRIGHT_ALLOWED_HOSTS", "")
    answer_to("192.168.1.20")
    answer_to("bench", "bench.local")
    assert os.environ["SPOOLWRIGHT_ALLOWED_HOSTS"] == "192.168.1.20,bench,bench.local"


def test_the_folder_is_the_one_that_was_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SPOOLWRIGHT_DATA", "/somewhere/else")
    assert usual_folder() == Path("/somewhere/else")


def test_the_folder_is_beside_run_py_otherwise(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("SPOOLWRIGHT_DATA")
    assert usual_folder().name == "shop-data"
    assert (usual_folder().parent / "run.py").is_file()


def test_opening_wakes_the_framework_over_a_new_folder(tmp_path: Path) -> None:
    env = {k: v for k, v in os.environ.items() if not k.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    code = (
        "import sys; from spoolwright.command.house import open_house; open_house(sys.argv[1]);"
        "from django.conf import settings; print(settings.DATA, settings.SECRET_KEY[:0], sep='')"
    )
    folder = tmp_path / "new" / "shop"
    done = subprocess.run(
        [sys.executable, "-c", code, str(folder)], env=env, capture_output=True, text=True, check=False
    )
    assert done.stdout.strip() == str(folder.resolve()), done.stderr
    assert (folder / "secret-key").is_file()


def test_what_is_compiled_is_kept_with_the_shops_data_unless_told_otherwise(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SPOOLWRIGHT_DATA", str(tmp_path / "none"))
    monkeypatch.delenv("NUMBA_CACHE_DIR", raising=False)
    keep_compiled()
    assert "NUMBA_CACHE_DIR" not in os.environ
    keep_compiled(tmp_path)
    assert os.environ["NUMBA_CACHE_DIR"] == str(tmp_path.resolve() / "compiled")
    keep_compiled(tmp_path / "another")
    assert os.environ["NUMBA_CACHE_DIR"] == str(tmp_path.resolve() / "compiled")


def test_warming_up_is_left_where_it_was_done(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    begun: list[list[str]] = []
    monkeypatch.setattr(subprocess, "Popen", lambda words, **_: begun.append(words))
    monkeypatch.setenv("NUMBA_CACHE_DIR", "")
    warm_up()
    assert not begun
    monkeypatch.setenv("NUMBA_CACHE_DIR", str(tmp_path))
    warm_up()
    assert "cast.warm()" in begun[0][-1]
    (tmp_path / "kept.nbi").touch()
    warm_up()
    assert len(begun) == 1
