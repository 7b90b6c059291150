"""What all tests share: fixed seeds, a database of one's own, and a summary that leaves nothing out."""

import os
import uuid
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import hypothesis
import pytest

from tests.filled import filled_shop  # noqa: F401  (a fixture)

# Commands that a test starts run the code beside these tests, whatever else is installed.
SOURCE = str(Path(__file__).resolve().parents[1] / "src")
os.environ["PYTHONPATH"] = os.pathsep.join(filter(None, [SOURCE, os.environ.get("PYTHONPATH", "")]))

hypothesis.settings.register_profile("same every time", derandomize=True, deadline=None)
hypothesis.settings.load_profile("same every time")


@pytest.fixture(scope="session")
def database_pattern(
    django_test_environment: None, django_db_blocker: Any, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[str]:
    """A freshly migrated, empty shop to copy from: a file on SQLite, the name of a database on PostgreSQL."""
    from django.core.management import call_command

    folder = tmp_path_factory.mktemp("pattern")
    with django_db_blocker.unblock(), new_database(folder, None) as name:
        with default_database(name):
            call_command("migrate", verbosity=0, interactive=False)
        yield name


@pytest.fixture
def own_database(
    request: pytest.FixtureRequest, database_pattern: str, django_db_blocker: Any, tmp_path: Path
) -> Iterator[None]:
    """A database that this test alone uses, where commits are real and other threads see them.

    Rows in ink cannot be deleted, so a test that commits cannot be wiped up after: it gets a copy of an empty
    shop and the copy is thrown away. For servers in a thread, and for two people who write at once.
    """
    if "db" in request.fixturenames or request.node.get_closest_marker("django_db"):
        pytest.fail("own_database and django_db exclude one another: take the mark away.")
    with (
        django_db_blocker.unblock(),
        new_database(tmp_path, database_pattern) as name,
        default_database(name),
    ):
        yield


@contextmanager
def default_database(name: str) -> Iterator[None]:
    """Let this database be the one that everything uses, in every thread that opens a connection."""
    from django.db import connections

    # Threads keep their connection objects, and those look into this very dictionary when they connect again.
    usual, shared = connections["default"], connections.settings["default"]
    usual_name, shared["NAME"] = shared["NAME"], name
    del connections["default"]
    try:
        yield
    finally:
        connections["default"].close()
        shared["NAME"] = usual_name
        connections["default"] = usual


@contextmanager
def new_database(folder: Path, pattern: str | None) -> Iterator[str]:
    """A new database, empty or a copy of the pattern; gone when the block ends."""
    from django.db import connection

    if connection.vendor != "postgresql":
        file = folder / "shop.sqlite3"
        if pattern:
            file.write_bytes(Path(pattern).read_bytes())
        yield str(file)
        return
    name = f"own_{uuid.uuid4().hex[:12]}"
    with connection._nodb_cursor() as cursor:
        cursor.execute(f'CREATE DATABASE "{name}"' + (f' TEMPLATE "{pattern}"' if pattern else ""))
    yield name
    with connection._nodb_cursor() as cursor:
        cursor.execute(f'DROP DATABASE "{name}" WITH (FORCE)')


def pytest_terminal_summary(terminalreporter: Any) -> None:
    """Say before pytest's own last line what the counts alone would hide."""
    if failed := os.environ.get("SPOOLWRIGHT_FAILED_CHECKS", ""):
        terminalreporter.section("failed before pytest began", red=True, bold=True)
        terminalreporter.line(f"{failed}: what it said stands above")
    for report in [one for reports in terminalreporter.stats.values() for one in reports]:
        for name, value in getattr(report, "user_properties", ()):
            if name == "to the summary" and getattr(report, "when", "") == "call":
                terminalreporter.line(str(value))
