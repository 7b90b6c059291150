"""A PostgreSQL that lives as long as the tests and leaves nothing behind.

    python tests/postgres.py COMMAND...     run a command with SPOOLWRIGHT_DATABASE_URL set to it

It uses an installed server; on Debian as root it installs one. The server listens on a free port of this
machine only, asks for no password and does not wait for the disk, so it is fit for nothing but tests.
"""

import os
import shutil
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

QUICK = ("fsync=off", "synchronous_commit=off", "full_page_writes=off")


class NoPostgres(Exception):
    """There is no PostgreSQL server on this machine; the words say how to get one."""


def is_root() -> bool:
    return hasattr(os, "geteuid") and os.geteuid() == 0


def installed() -> Path | None:
    """The folder with initdb and postgres in it, the newest where there are several."""
    found = sorted(
        Path("/usr/lib/postgresql").glob("*/bin"), key=lambda folder: int(folder.parent.name.split(".")[0])
    )
    on_path = shutil.which("initdb")
    candidates = [*reversed(found), *([Path(on_path).resolve().parent] if on_path else [])]
    return next((folder for folder in candidates if (folder / "initdb").exists()), None)


def binaries() -> Path:
    """The server's folder, installing the server first where that is allowed."""
    if folder := installed():
        return folder
    if is_root() and Path("/etc/debian_version").exists():
        quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
        subprocess.run(["apt-get", "update", "-q"], env=quiet, capture_output=True, check=False)
        subprocess.run(
            ["apt-get", "install", "-qy", "postgresql"], env=quiet, capture_output=True, check=False
        )
        if folder := installed():
            return folder
    raise NoPostgres(
        "there is no PostgreSQL server on this machine: install one (on Debian and Ubuntu: "
        "apt-get install postgresql) so that initdb is found."
    )


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def as_server() -> dict[str, Any]:
    """PostgreSQL refuses to run as root, so root lends it the account that its package made."""
    return {"user": "postgres", "extra_groups": [], "cwd": "/"} if is_root() else {}


def wait_until_it_answers(url: str, server: subprocess.Popen[bytes], log: Path) -> None:
    import psycopg

    for _ in range(300):
        try:
            psycopg.connect(url, connect_timeout=2).close()
            return
        except psycopg.OperationalError:
            if server.poll() is not None:
                break
            time.sleep(0.1)
    raise NoPostgres(f"PostgreSQL did not start: {log.read_text(errors='replace')[-800:]}")


@contextmanager
def running() -> Iterator[str]:
    """A fresh server; gives its URL, and removes all of it afterwards."""
    folder = binaries()
    home = Path(tempfile.mkdtemp(prefix="spoolwright-postgres-"))
    try:
        if is_root():
            shutil.chown(home, "postgres")
        data, log, port = home / "data", home / "log", free_port()
        make = [
            folder / "initdb",
            "-D",
            data,
            "-U",
            "shop",
            "--auth=trust",
            "--encoding=UTF8",
            "--no-locale",
            "-N",
        ]
        made = subprocess.run(make, capture_output=True, text=True, check=False, **as_server())
        if made.returncode:
            raise NoPostgres(f"PostgreSQL could not make its folder: {made.stderr.strip()[-800:]}")
        told = [word for setting in QUICK for word in ("-c", setting)]
        start = [folder / "postgres", "-D", data, "-p", str(port), "-h", "127.0.0.1", "-k", "", *told]
        with log.open("wb") as file:
            server = subprocess.Popen(start, stdout=file, stderr=file, **as_server())
        try:
            url = f"postgresql://shop@127.0.0.1:{port}/postgres"
            wait_until_it_answers(url, server, log)
            yield url
        finally:
            server.terminate() if os.name == "nt" else server.send_signal(2)
            server.wait(timeout=30)
    finally:
        shutil.rmtree(home, ignore_errors=True)


def main(command: list[str]) -> int:
    try:
        with running() as url:
            env = {**os.environ, "SPOOLWRIGHT_DATABASE_URL": url}
            return subprocess.run(command or ["env"], env=env, check=False).returncode
    except NoPostgres as missing:
        print(missing, file=sys.stderr)
        return 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
