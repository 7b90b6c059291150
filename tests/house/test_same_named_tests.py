"""A source file has a test file of the same name, so that one can be found from the other."""

from pathlib import Path

from tests.house.tree import SOURCE, python_files, short

SHARE = 0.95
# Django looks for these by name; what is in them is settled by the tests of what they name.
WITHOUT = {"__init__.py", "apps.py", "models.py", "urls.py"}


def sources() -> list[Path]:
    return [path for path in python_files("src") if path.name not in WITHOUT]


def has_test(source: Path, tests: set[str]) -> bool:
    """unit/ mirrors the tree; a file of shop is tested in shop/, a file of a page in its folder of pages/."""
    inside = source.relative_to(SOURCE)
    room, stem = inside.parts[0], source.stem
    if f"tests/unit/{inside.parent.as_posix()}/test_{stem}.py".replace("/./", "/") in tests:
        return True
    if room == "shop":
        return any(name.startswith("tests/shop/") and name.endswith(f"/test_{stem}.py") for name in tests)
    if room == "pages" and len(inside.parts) > 2 and inside.parts[1] not in ("templatetags", "words"):
        return f"tests/pages/{inside.parts[1]}/test_{stem}.py" in tests
    if room == "pages":
        return any(name.startswith("tests/pages/") and name.endswith(f"/test_{stem}.py") for name in tests)
    return False


def test_nearly_every_source_file_has_a_test_of_its_name() -> None:
    tests = {short(path) for path in python_files("tests")}
    without = [short(path) for path in sources() if not has_test(path, tests)]
    share = 1 - len(without) / len(sources())
    assert share >= SHARE, f"{share:.0%} of the files have a test of their name. Without: {without}"
