"""The browser for the tests: an installed one in its order, else Playwright's own, never none in silence."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

FIND = Path(__file__).resolve().parents[1] / "browser" / "find.py"

pytestmark = pytest.mark.skipif(os.name == "nt", reason="the browsers made here are shell scripts")


def browser(folder: Path, name: str, *, starts: bool = True) -> Path:
    """A program of that name that answers to --version, as a browser does, or breaks when it is started."""
    folder.mkdir(exist_ok=True)
    made = folder / name
    made.write_text(f"#!/bin/sh\nexit {0 if starts else 1}\n")
    made.chmod(0o755)
    return made


def find(folder: Path, own: Path, **more: str) -> subprocess.CompletedProcess[str]:
    """What is found where only these programs are installed and Playwright keeps its own in that folder."""
    surroundings = {name: value for name, value in os.environ.items() if name != "SPOOLWRIGHT_TEST_BROWSER"}
    env = surroundings | {"PATH": str(folder), "PLAYWRIGHT_BROWSERS_PATH": str(own)} | more
    return subprocess.run([sys.executable, FIND], env=env, capture_output=True, text=True, check=False)


def test_chromium_goes_before_chrome_and_chrome_before_edge(tmp_path: Path) -> None:
    made = [browser(tmp_path, name) for name in ("microsoft-edge", "google-chrome", "chromium")]
    while made:
        found = find(tmp_path, tmp_path / "own")
        assert (found.returncode, found.stdout.strip()) == (0, str(made[-1])), found.stderr
        made.pop().unlink()


def test_one_that_does_not_start_is_passed_over(tmp_path: Path) -> None:
    browser(tmp_path, "chromium", starts=False)
    edge = browser(tmp_path, "microsoft-edge")
    assert find(tmp_path, tmp_path / "own").stdout.strip() == str(edge)


WHERE = """
from playwright.sync_api import sync_playwright
with sync_playwright() as playwright:
    print(playwright.chromium.executable_path)
"""


def test_where_none_is_installed_it_is_playwrights_own(tmp_path: Path) -> None:
    own = tmp_path / "own"
    env = os.environ | {"PLAYWRIGHT_BROWSERS_PATH": str(own)}
    told = subprocess.run([sys.executable, "-c", WHERE], env=env, capture_output=True, text=True, check=True)
    place = Path(told.stdout.strip())
    place.parent.mkdir(parents=True)
    kept = browser(place.parent, place.name)
    assert find(tmp_path / "nothing here", own).stdout.strip() == str(kept)


def test_a_named_one_settles_it(tmp_path: Path) -> None:
    browser(tmp_path, "chromium")
    named = browser(tmp_path / "mine", "my-browser")
    assert find(tmp_path, tmp_path, SPOOLWRIGHT_TEST_BROWSER=str(named)).stdout.strip() == str(named)


def test_a_named_one_that_does_not_start_is_one_line(tmp_path: Path) -> None:
    browser(tmp_path, "chromium")
    named = browser(tmp_path / "mine", "my-browser", starts=False)
    found = find(tmp_path, tmp_path, SPOOLWRIGHT_TEST_BROWSER=str(named))
    assert found.returncode == 1
    (line,) = found.stderr.strip().splitlines()
    assert str(named) in line
