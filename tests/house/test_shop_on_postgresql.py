"""The tests of the shop once more, on the other database."""

import os
import subprocess
import sys
from collections.abc import Callable

import pytest

from tests.house.tree import ROOT
from tests.postgres import NoPostgres, running

LEFT_OUT = ("PYTEST_XDIST_WORKER", "PYTEST_XDIST_WORKER_COUNT", "PYTEST_CURRENT_TEST", "PYTEST_ADDOPTS")


def run_shop_tests(url: str) -> subprocess.CompletedProcess[str]:
    env = {name: value for name, value in os.environ.items() if name not in LEFT_OUT}
    env["SPOOLWRIGHT_DATABASE_URL"] = url
    command = [sys.executable, "-m", "pytest", "tests/shop", "-q", "-p", "no:cacheprovider", "-p", "no:xdist"]
    return subprocess.run(command, cwd=ROOT, env=env, capture_output=True, text=True, check=False)


def test_the_shop_keeps_its_rules_on_postgresql(record_property: Callable[[str, object], None]) -> None:
    try:
        with running() as url:
            done = run_shop_tests(url)
    except NoPostgres as missing:
        if os.environ.get("CI"):
            raise
        record_property("to the summary", f"The PostgreSQL half did not run: {missing}")
        pytest.skip(f"The PostgreSQL half did not run: {missing}")
    told = done.stdout.strip()
    assert done.returncode == 0, f"On PostgreSQL:\n{told[-8000:]}\n{done.stderr[-2000:]}"
    record_property("to the summary", f"tests/shop on PostgreSQL: {told.splitlines()[-1].strip('= ')}")
