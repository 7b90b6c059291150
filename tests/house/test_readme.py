"""The front page keeps up with the program."""

import re

from spoolwright.command.__main__ import VERBS
from tests.house.tree import ROOT, SOURCE

PAGES = sorted(path.parent.name for path in (SOURCE / "pages").glob("*/urls.py"))


def readme() -> str:
    return (ROOT / "README.md").read_text(encoding="utf-8")


def as_words(text: str) -> str:
    return re.sub(r"[\s_-]+", " ", text.lower())


def test_it_begins_with_the_job() -> None:
    title, _, rest = readme().partition("\n")
    assert title.startswith("# Spoolwright")
    first = rest.strip().split("\n\n")[0]
    assert "reel" in first
    assert not first.startswith(("#", "!", "[", "-", "*", "`"))


def test_it_gives_the_two_commands_one_after_the_other() -> None:
    text = readme()
    assert 0 < text.index("python3 run.py\n") < text.index("python3 run.py test\n")


def test_it_mentions_every_verb_of_the_command_line() -> None:
    missing = [verb for verb in VERBS if not re.search(rf"spoolwright {verb}\b", readme())]
    assert not missing, f"README.md does not mention: {missing}"


def test_it_mentions_every_page() -> None:
    assert PAGES, "no page has been found, so this test has looked at nothing"
    said = as_words(readme())
    missing = [name for name in PAGES if as_words(name.removesuffix("_page")).strip() not in said]
    assert not missing, f"README.md does not mention these pages: {missing}"


def test_the_pictures_it_shows_are_there() -> None:
    shown = re.findall(r"!\[([^\]]*)\]\(([^)]+)\)", readme())
    assert shown, "README.md shows nothing of the running program"
    assert not [path for words, path in shown if not (ROOT / path).is_file() or not words.strip()]


def test_the_changelog_knows_this_version() -> None:
    version = re.search(r'(?m)^version = "([^"]+)"', (ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert version
    assert version[1] in (ROOT / "CHANGELOG.md").read_text(encoding="utf-8")
