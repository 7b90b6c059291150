"""Finds a browser for the tests: an installed one, Playwright's own, or on Debian as root the packaged one.

    python tests/browser/find.py            print the path of the browser, or one line that says what to do

SPOOLWRIGHT_TEST_BROWSER names one and settles it.
"""

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome-stable",
    "google-chrome",
    "chrome",
    "microsoft-edge-stable",
    "microsoft-edge",
    "msedge",
)
MAC = ("Chromium.app", "Google Chrome.app", "Microsoft Edge.app")
WINDOWS = (r"Chromium\Application\chrome.exe", r"Google\Chrome\Application\chrome.exe")
WINDOWS_EDGE = (r"Microsoft\Edge\Application\msedge.exe",)


class NoBrowser(Exception):
    """There is no browser that the tests can drive; the words say how to get one."""


def installed() -> Iterator[Path]:
    """Every Chromium, Chrome and Edge that this machine seems to have, in that order."""
    yield from (Path(found) for name in NAMES if (found := shutil.which(name)))
    for name in MAC:
        yield Path("/Applications") / name / "Contents" / "MacOS" / name.removesuffix(".app")
    roots = [os.environ.get(name, "") for name in ("LOCALAPPDATA", "PROGRAMFILES", "PROGRAMFILES(X86)")]
    yield from (Path(root) / below for below in WINDOWS + WINDOWS_EDGE for root in roots if root)


def playwrights_own() -> Path:
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        return Path(playwright.chromium.executable_path)


def starts(browser: Path) -> bool:
    """Whether it is there and has what it needs; on Windows asking for the version would open a window."""
    if not browser.is_file():
        return False
    if os.name == "nt":
        return True
    try:
        asked = subprocess.run([browser, "--version"], capture_output=True, timeout=30, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return False
    return asked.returncode == 0


def fetch_playwrights_own() -> None:
    env = {**os.environ, "PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT": "10000"}
    command = [sys.executable, "-m", "playwright", "install", "chromium"]
    try:
        subprocess.run(command, env=env, capture_output=True, timeout=400, check=False)
    except subprocess.TimeoutExpired:
        return


def fetch_debians() -> None:
    if not (hasattr(os, "geteuid") and os.geteuid() == 0 and Path("/etc/debian_version").exists()):
        return
    env = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    for command in (["apt-get", "update", "-q"], ["apt-get", "install", "-qy", "chromium"]):
        subprocess.run(command, env=env, capture_output=True, check=False)


def find() -> Path:
    """The browser to drive."""
    if named := os.environ.get("SPOOLWRIGHT_TEST_BROWSER", ""):
        if starts(Path(named)):
            return Path(named)
        raise NoBrowser(
            f"SPOOLWRIGHT_TEST_BROWSER says {named}, and that does not start: name another or none."
        )
    for browser in installed():
        if starts(browser):
            return browser
    own = playwrights_own()
    for fetch in (lambda: None, fetch_playwrights_own):
        fetch()
        if starts(own):
            return own
    fetch_debians()
    packaged = next((browser for browser in installed() if starts(browser)), None)
    if packaged:
        return packaged
    raise NoBrowser(
        "There is no browser for the tests: install Chromium, Chrome or Edge, or name one with "
        "SPOOLWRIGHT_TEST_BROWSER, then start again."
    )


if __name__ == "__main__":
    try:
        print(find())
    except NoBrowser as missing:
        sys.exit(str(missing))
