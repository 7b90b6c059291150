"""run.py on a bare machine: every way it can fail is one line that says what to do.

Each failure is provoked for real, on a copy of run.py with a small project of its own beside it.
"""

import ast
import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import pytest

ROOT = Path(__file__).resolve().parents[2]
PROJECT = '[project]\nname = "small"\nversion = "1"\n'


@pytest.fixture
def run_py() -> ModuleType:
    spec = importlib.util.spec_from_file_location("run_py", ROOT / "run.py")
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A folder with run.py and a lock in it that asks for one package which no index can give here."""
    shutil.copy(ROOT / "run.py", tmp_path)
    lock = "nothing-of-the-kind==1.0 \\\n    --hash=sha256:" + 64 * "0" + "\n"
    (tmp_path / "requirements.txt").write_text(lock)
    (tmp_path / "pyproject.toml").write_text(PROJECT)
    return tmp_path


def start(checkout: Path, *words: str, **env: str) -> subprocess.CompletedProcess[str]:
    kept = {k: v for k, v in os.environ.items() if not k.startswith(("PIP_", "PYTHONPATH"))}
    return subprocess.run(
        [sys.executable, str(checkout / "run.py"), *words],
        env={**kept, **env},
        cwd=checkout,
        capture_output=True,
        text=True,
        stdin=subprocess.DEVNULL,
        check=False,
    )


def the_line(done: subprocess.CompletedProcess[str]) -> str:
    """What a failed start said: one line, and a code that is not zero."""
    assert done.returncode not in (0, None), done.stdout
    lines = done.stderr.strip().splitlines()
    assert len(lines) == 1, done.stderr
    return lines[0]


@pytest.mark.parametrize("version", [(2, 7), (3, 6), (3, 10), (3, 10, 14, "final", 0)])
def test_a_python_that_is_too_old_is_told_what_to_do(run_py: ModuleType, version: tuple[int, ...]) -> None:
    line = run_py.too_old(version)
    assert "3.11" in line
    assert "install a newer Python" in line
    assert "\n" not in line


@pytest.mark.parametrize("version", [(3, 11), (3, 12, 1), (3, 14), (4, 0)])
def test_a_python_that_is_new_enough_is_told_nothing(run_py: ModuleType, version: tuple[int, ...]) -> None:
    assert run_py.too_old(version) == ""


def test_an_old_python_can_read_far_enough_to_say_so() -> None:
    text = (ROOT / "run.py").read_text(encoding="ascii")
    oldest = (3, 4) if sys.version_info < (3, 13) else (3, 7)
    tree = ast.parse(text, feature_version=oldest)
    newer = (ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.AsyncFunctionDef, ast.Match, ast.Nonlocal)
    assert not [node.lineno for node in ast.walk(tree) if isinstance(node, newer)]
    assert not [f.name for f in ast.walk(tree) if isinstance(f, ast.FunctionDef) and f.returns]
    asks = next(n.lineno for n in tree.body if isinstance(n, ast.If) and "too_old" in ast.unparse(n.test))
    early = [n for n in tree.body if isinstance(n, ast.Import | ast.ImportFrom) and n.lineno < asks]
    assert [ast.unparse(node) for node in early] == ["import sys"]


def test_it_needs_nothing_but_the_standard_library() -> None:
    tree = ast.parse((ROOT / "run.py").read_text())
    names = {a.name.split(".")[0] for n in ast.walk(tree) if isinstance(n, ast.Import) for a in n.names}
    names |= {(n.module or "").split(".")[0] for n in ast.walk(tree) if isinstance(n, ast.ImportFrom)}
    assert names <= set(sys.stdlib_module_names)


def test_without_the_venv_module_it_names_the_package(checkout: Path, tmp_path: Path) -> None:
    shadow = tmp_path / "shadow"
    shadow.mkdir()
    (shadow / "ensurepip.py").write_text("raise ImportError('packed apart')\n")
    line = the_line(start(checkout, PYTHONPATH=str(shadow)))
    assert "python3-venv" in line


def test_without_a_network_it_says_so(checkout: Path) -> None:
    nobody_listens = "http://127.0.0.1:9/"
    done = start(checkout, PIP_INDEX_URL=nobody_listens, PIP_RETRIES="0", PIP_CONFIG_FILE=os.devnull)
    line = the_line(done)
    assert "connect this computer to the network" in line
    assert "Making .venv" in done.stdout
    assert (checkout / ".setup.log").read_text()


def test_a_full_disk_is_said_as_such(checkout: Path) -> None:
    if not Path("/dev/full").exists():
        pytest.skip("this system has no device that is always full")
    (checkout / ".setup.log").symlink_to("/dev/full")
    assert "The disk is full" in the_line(start(checkout))


def test_a_full_disk_that_pip_ran_into_is_said_as_such(run_py: ModuleType, tmp_path: Path) -> None:
    told = "ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device\n"
    assert "The disk is full" in run_py.why("pip stopped", told, tmp_path)


def test_a_package_that_is_not_the_locked_one_is_not_installed(run_py: ModuleType, tmp_path: Path) -> None:
    told = "ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE. If you have updated\n"
    assert "not the one that was locked" in run_py.why("pip stopped", told, tmp_path)


def test_anything_else_that_pip_says_is_handed_on(checkout: Path) -> None:
    (checkout / "requirements.txt").write_text("this is no lock at all\n")
    line = the_line(start(checkout, PIP_CONFIG_FILE=os.devnull))
    assert "pip stopped" in line
    assert ".setup.log" in line


def test_a_folder_it_may_not_write_is_named(checkout: Path) -> None:
    (checkout / ".venv").write_text("a file where the folder belongs")
    assert ".venv" in the_line(start(checkout))


def stand_in(checkout: Path) -> None:
    """An environment whose Python is this one and whose packages are already there."""
    binaries = checkout / ".venv" / ("Scripts" if os.name == "nt" else "bin")
    binaries.mkdir(parents=True)
    (binaries / "python").symlink_to(sys.executable)


def test_a_second_start_installs_nothing(checkout: Path, run_py: ModuleType, tmp_path: Path) -> None:
    stand_in(checkout)
    run_py.HERE, run_py.ENVIRONMENT = checkout, checkout / ".venv"
    run_py.PYTHON = checkout / ".venv" / "bin" / "python"
    assert not run_py.is_installed("requirements.txt")
    run_py.stamp("requirements.txt").write_text(run_py.wanted("requirements.txt"))
    assert run_py.is_installed("requirements.txt")
    run_py.install("requirements.txt")
    assert not (checkout / ".setup.log").exists(), "something was run although nothing had changed"


@pytest.mark.parametrize("changed", ["requirements.txt", "pyproject.toml"])
def test_a_changed_lock_is_installed_again(checkout: Path, run_py: ModuleType, changed: str) -> None:
    stand_in(checkout)
    run_py.HERE, run_py.ENVIRONMENT = checkout, checkout / ".venv"
    run_py.PYTHON = checkout / ".venv" / "bin" / "python"
    run_py.stamp("requirements.txt").write_text(run_py.wanted("requirements.txt"))
    with (checkout / changed).open("a") as file:
        file.write("# changed\n")
    assert not run_py.is_installed("requirements.txt")


def test_a_word_that_it_does_not_know_is_refused(checkout: Path) -> None:
    done = start(checkout, "--colour")
    assert done.returncode == 2
    assert "--colour" in done.stderr


def test_sharing_is_handed_on_to_the_server(run_py: ModuleType) -> None:
    run_py.install = lambda lock: None
    run_py.hand_over = lambda command: command
    assert "--share" not in run_py.open_shop([])
    assert "--share" in run_py.open_shop(["--share"])
    named = run_py.open_shop(["--share-at", "192.168.1.20"])
    assert named[named.index("--share-at") + 1] == "192.168.1.20"
