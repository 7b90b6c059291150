#!/usr/bin/env python3
"""Sets Spoolwright up beside this file and opens it, or sets it up and tests it.

    python3 run.py                 make .venv, install the locked packages, open the shop in the browser
    python3 run.py --share         the same, and an encrypted address with a QR code for the phone
    python3 run.py test [...]      the same, then everything that CI runs; the rest goes to pytest

Only the standard library, and no syntax newer than the oldest Python that somebody may still start it with:
a Python that is too old must be able to read this file far enough to say so.
"""

import sys

NEEDED = (3, 11)


def too_old(version):
    """The line for a Python that is too old, or nothing."""
    if tuple(version[:2]) >= NEEDED:
        return ""
    return (
        "Spoolwright needs Python %d.%d or later, and this is Python %d.%d: install a newer Python "
        "(python.org, or your system's packages) and start run.py with that one."
        % (NEEDED[0], NEEDED[1], version[0], version[1])
    )


if too_old(sys.version_info):
    sys.exit(too_old(sys.version_info))

import argparse
import errno
import hashlib
import os
import re
import subprocess
import time
from pathlib import Path

HERE = Path(__file__).resolve().parent
ENVIRONMENT = HERE / ".venv"
BINARIES = ENVIRONMENT / ("Scripts" if os.name == "nt" else "bin")
PYTHON = BINARIES / ("python.exe" if os.name == "nt" else "python")
EXE = ".exe" if os.name == "nt" else ""
LOCK = "requirements.txt"
TEST_LOCK = "requirements-dev.txt"

NO_NETWORK = (
    "NewConnectionError",
    "NameResolutionError",
    "Failed to establish a new connection",
    "Temporary failure in name resolution",
    "Connection refused",
    "Network is unreachable",
    "ConnectTimeoutError",
    "Read timed out",
    "ProxyError",
    "connection broken",
    "(from versions: none)",
)
FULL_DISK = "The disk is full: make about 1.5 GB of room where Spoolwright lies, then start again."


class Stop(Exception):
    """One line that says what to do."""


# ---- the environment ----


def check_venv():
    """Some systems pack the venv module apart from Python."""
    try:
        import ensurepip  # noqa: F401
        import venv  # noqa: F401
    except ImportError:
        raise Stop(
            "This Python comes without its venv module: install it (on Debian and Ubuntu: apt-get install "
            "python3-venv), then start again."
        )


def works(*command):
    """Whether a command of the environment runs at all."""
    try:
        return subprocess.call(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) == 0
    except OSError:
        return False


def make_environment():
    """A .venv whose Python is new enough and has pip, made or mended."""
    new_enough = "import sys; sys.exit(sys.version_info[:2] < %r)" % (NEEDED,)
    if not works(str(PYTHON), "-c", new_enough):
        check_venv()
        say("Making .venv")
        watch([sys.executable, "-m", "venv", "--clear", str(ENVIRONMENT)], "Python could not make .venv")
    elif not works(str(PYTHON), "-m", "pip", "--version"):
        check_venv()
        watch([str(PYTHON), "-m", "ensurepip"], "pip could not be put into .venv")


def wanted(lock):
    """What the stamp must say: a hash of the lock, of the project's own table, and of where all this lies."""
    seen = hashlib.sha256(str(HERE).encode())
    for name in (lock, "pyproject.toml"):
        seen.update((HERE / name).read_bytes())
    return seen.hexdigest()


def stamp(lock):
    return ENVIRONMENT / ("installed-" + lock)


def is_installed(lock):
    kept = stamp(lock)
    return PYTHON.exists() and kept.is_file() and kept.read_text() == wanted(lock)


def install(lock):
    """Install one locked set with its hashes, and the project itself beside it; nothing if that was done."""
    if is_installed(lock):
        return
    make_environment()
    count = len(set(re.findall(r"(?m)^([A-Za-z0-9._-]+)==", (HERE / lock).read_text())))
    say("Installing %d packages from %s; this takes about a minute, once" % (count, lock))
    pip = [str(PYTHON), "-m", "pip", "install", "--disable-pip-version-check", "--no-input"]
    watch(pip + ["--progress-bar", "off", "--require-hashes", "-r", str(HERE / lock)], "pip stopped", count)
    if lock == LOCK:
        project = ["--no-deps", "--no-build-isolation", "--quiet", "--editable", str(HERE)]
        watch(pip + project, "Spoolwright itself could not be installed")
    stamp(lock).write_text(wanted(lock))


def watch(command, failure, count=0):
    """Run a command of the set-up: its words to a log, its progress to the screen, a failure to one line."""
    log = HERE / ".setup.log"
    kept = []
    with log.open("w", encoding="utf-8", errors="replace") as file:
        run = subprocess.Popen(
            command,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            universal_newlines=True,
            encoding="utf-8",
            errors="replace",
        )
        for line in run.stdout:
            kept.append(line)
            file.write(line)
            show_progress(line, kept, count)
    if count and sys.stdout.isatty():
        sys.stdout.write("\r" + " " * 60 + "\r")
    if run.wait() != 0:
        raise Stop(why(failure, "".join(kept), log))


def show_progress(line, kept, count):
    """How many of the packages have been looked at; one line on a screen, one in ten in a log."""
    if not count:
        return
    if line.startswith("Collecting "):
        done = sum(1 for one in kept if one.startswith("Collecting "))
        name = line.split()[1].split("==")[0]
        words = "  %d of %d  %s" % (min(done, count), count, name)
        if sys.stdout.isatty():
            sys.stdout.write("\r" + words.ljust(60))
        elif done % 10 == 0:
            print(words)
    elif line.startswith("Installing collected packages"):
        print(("\r" if sys.stdout.isatty() else "") + "  all fetched; unpacking them".ljust(60))
    sys.stdout.flush()


def why(failure, told, log):
    """The one line that a failed command's output comes down to."""
    if "No space left on device" in told or "[Errno 28]" in told:
        return FULL_DISK
    if "DO NOT MATCH THE HASHES" in told:
        return (
            "A package that was fetched is not the one that was locked, so it was not installed: try on "
            "another network, and if it stays so, do not go on but report it. All that pip said is in %s."
            % log
        )
    if any(sign in told for sign in NO_NETWORK):
        return (
            "The packages could not be fetched: connect this computer to the network (or set PIP_INDEX_URL "
            "to an index that it can reach), then start again. All that pip said is in %s." % log
        )
    lines = [line.strip() for line in told.splitlines() if line.strip()]
    errors = [line for line in lines if line.lower().startswith("error")] or lines[-1:]
    last = errors[-1] if errors else "it said nothing"
    return "%s (%s): put that right and start again. All that it said is in %s." % (failure, last, log)


def say(words):
    print(words)
    sys.stdout.flush()


# ---- the two things to do ----


def open_shop(words):
    """Install what is missing and hand over to the server."""
    parser = argparse.ArgumentParser(
        prog="run.py",
        description="Set Spoolwright up and open it.",
        epilog="run.py test [...] sets up and tests.",
    )
    parser.add_argument(
        "--data", metavar="DIR", default=str(HERE / "shop-data"), help="where the shop's data lies"
    )
    parser.add_argument(
        "--port", type=int, metavar="N", help="this port and no other (else 8017 or the next free)"
    )
    parser.add_argument("--empty", action="store_true", help="start without the demonstration workshop")
    parser.add_argument("--no-browser", action="store_true", help="print the link and do not open it")
    parser.add_argument(
        "--share",
        action="store_true",
        help="let the phones of your own network in, encrypted, with a QR code to sign in by",
    )
    parser.add_argument("--share-at", metavar="ADDRESS", help="share on this address of this machine")
    parser.add_argument("--processes", type=int, metavar="N", default=1, help="serve with N processes")
    told = parser.parse_args(words)
    install(LOCK)
    command = [str(PYTHON), "-m", "spoolwright.command", "serve", "--data", told.data]
    command += ["--processes", str(told.processes)]
    command += ["--port", str(told.port)] if told.port else []
    command += ["--share"] * told.share + (["--share-at", told.share_at] if told.share_at else [])
    command += ["--empty"] * told.empty + ["--no-browser"] * told.no_browser
    return hand_over(command)


def hand_over(command):
    """Become the server where the system can do that, so that one Ctrl-C and one kill reach it."""
    sys.stdout.flush()
    if os.name != "nt":
        os.execv(command[0], command)
    try:
        return subprocess.call(command)
    except KeyboardInterrupt:
        return 0


def checks():
    python = [str(PYTHON), "-m"]
    return (
        ("ruff check", python + ["ruff", "check", "."]),
        ("ruff format", python + ["ruff", "format", "--check", "."]),
        ("mypy", python + ["mypy"]),
        ("import-linter", [str(BINARIES / ("lint-imports" + EXE))]),
        ("a browser for the tests", [str(PYTHON), str(HERE / "tests" / "browser" / "find.py")]),
    )


def check(name, command):
    """Run one check before the tests; its words are shown only when it fails."""
    began = time.time()
    run = subprocess.Popen(command, cwd=str(HERE), stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    told = run.communicate()[0].decode("utf-8", "replace").rstrip()
    say("%-24s %s  (%.0f s)" % (name, "FAILED" if run.returncode else "ok", time.time() - began))
    if run.returncode:
        say(told)
    return run.returncode == 0


def test(words):
    """Everything that CI runs. pytest comes last, and names in its summary what failed before it."""
    install(LOCK)
    install(TEST_LOCK)
    failed = [name for name, command in checks() if not check(name, command)]
    os.environ["SPOOLWRIGHT_FAILED_CHECKS"] = ", ".join(failed)
    # In the order of the folders: the browser and the second database take longest, and so begin first.
    command = [str(PYTHON), "-m", "pytest", "-n", "2", "--dist", "loadfile", "--no-loadscope-reorder"]
    code = subprocess.call(command + words, cwd=str(HERE))
    return code or (1 if failed else 0)


def main(words):
    # Our matrices are small: a second thread of the linear algebra only waits for its core.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    try:
        return test(words[1:]) if words[:1] == ["test"] else open_shop(words)
    except Stop as stop:
        line = str(stop)
    except KeyboardInterrupt:
        line = "Stopped. What was done so far is kept; start again to go on."
    except OSError as error:
        if error.errno == errno.ENOSPC:
            line = FULL_DISK
        else:
            line = "%s: %s. Put that right and start again." % (error.filename or HERE, error.strerror)
    sys.stderr.write(line + "\n")
    return 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
