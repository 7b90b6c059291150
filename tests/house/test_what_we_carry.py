"""What other people made and we carry, and the locks that say what else is fetched."""

import re
from pathlib import Path

import pytest

from tests.house.tree import ROOT, SOURCE, short, tracked

VENDOR = SOURCE / "pages" / "static" / "vendor"
SCRIPTS = sorted(VENDOR.glob("*.js"))
FONTS = [path for path in tracked() if path.suffix in (".woff2", ".woff", ".ttf", ".otf")]
LOCKS = [ROOT / "requirements.txt", ROOT / "requirements-cluster.txt", ROOT / "requirements-dev.txt"]
# Where to fetch from is for the machine that fetches to say.
INDEX = re.compile(
    r"--(extra-)?index-url|--find-links|--trusted-host|\[\[tool\.uv\.index\]\]|\bindex-url\s*=|/simple/?\b"
)


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_a_script_that_we_carry_has_its_licence_beside_it(script: Path) -> None:
    licence = VENDOR / f"{script.name.removesuffix('.js').removesuffix('.min')}-LICENSE.txt"
    assert licence.is_file()
    assert len(licence.read_text(encoding="utf-8")) > 500
    assert script.name in (VENDOR / "README.txt").read_text(encoding="utf-8")


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_a_script_that_we_carry_points_to_no_missing_map(script: Path) -> None:
    assert "sourceMappingURL" not in script.read_text(encoding="utf-8")


@pytest.mark.parametrize("font", FONTS, ids=lambda path: path.name)
def test_a_font_that_we_carry_has_its_licence_beside_it(font: Path) -> None:
    licences = [
        path
        for path in font.parent.glob("*-OFL.txt")
        if font.name.startswith(path.name.removesuffix("-OFL.txt"))
    ]
    assert licences, f"{short(font)} has no licence"
    assert "OPEN FONT LICENSE" in licences[0].read_text(encoding="utf-8").upper()


@pytest.mark.parametrize("lock", LOCKS, ids=lambda path: path.name)
def test_a_lock_has_a_hash_for_every_package_and_no_address(lock: Path) -> None:
    text = lock.read_text(encoding="utf-8")
    entries = re.split(r"(?m)^(?=\S)", text)
    without = [entry.split()[0] for entry in entries if "==" in entry and "--hash=sha256:" not in entry]
    assert not without, f"no hash: {without}"
    assert "://" not in text


def test_no_file_says_where_packages_come_from() -> None:
    here = Path(__file__)
    texts = {".py", ".toml", ".txt", ".in", ".md", ".cfg", ".sh", ".yml", ".yaml", ".json", ""}
    read = [
        path for path in tracked() if path.suffix in texts and path != here and "vendor" not in path.parts
    ]
    # run.py and its test set the machine's own variable, and name no address but this machine's.
    found = [short(path) for path in read if INDEX.search(path.read_text(encoding="utf-8", errors="replace"))]
    assert not [name for name in found if name not in ("Makefile",)], found
