"""Brings the data folder to the state the program needs: tables, static files, the demonstration workshop."""

import hashlib
import shutil
import subprocess
import sys
from pathlib import Path

UNFINISHED = "demonstration-unfinished"


def bring_tables_up_to_date() -> bool:
    """Run the migrations that are missing; true when there were no tables of a shop before."""
    from django.core.management import call_command
    from django.db import connection
    from django.db.migrations.executor import MigrationExecutor

    executor = MigrationExecutor(connection)
    was_new = all(room != "shop" for room, _ in executor.loader.applied_migrations)
    if executor.migration_plan(executor.loader.graph.leaf_nodes()):
        print("Making the tables" if was_new else "Bringing the tables up to date", flush=True)
        call_command("migrate", interactive=False, verbosity=0)
    return was_new


def collect_static(data: Path) -> None:
    """Gather the static files under names with a hash in them, once for each state of the program."""
    from django.contrib.staticfiles.finders import get_finders
    from django.core.management import call_command

    seen = hashlib.sha256()
    for finder in get_finders():
        for name, storage in finder.list([]):
            state = Path(storage.path(name)).stat()
            seen.update(f"{name} {state.st_size} {state.st_mtime_ns};".encode())
    stamp = data / "static-collected"
    if stamp.is_file() and stamp.read_text() == seen.hexdigest() and (data / "static").is_dir():
        return
    call_command("collectstatic", interactive=False, clear=True, verbosity=0)
    stamp.write_text(seen.hexdigest())


def forget_unfinished(data: Path) -> None:
    """Throw away a demonstration whose filling was broken off: half a workshop would mislead."""
    if not (data / UNFINISHED).exists():
        return
    from django.core.management import call_command
    from django.db import connection

    if connection.vendor == "sqlite":
        for leftover in data.glob("shop.sqlite3*"):
            leftover.unlink()
    else:  # a server's database may hold more than this shop: only the shop's own tables go
        call_command("migrate", "shop", "zero", interactive=False, verbosity=0)
    shutil.rmtree(data / "files", ignore_errors=True)
    (data / UNFINISHED).unlink()


def fill_with_demonstration(data: Path) -> bool:
    """Load the invented workshop in a process of its own: the server need not carry its mathematics."""
    (data / UNFINISHED).touch()
    command = [sys.executable, "-m", "spoolwright.command", "demo", "--data", str(data)]
    filled = subprocess.run(command, check=False, stdout=sys.stdout).returncode == 0
    if filled:
        (data / UNFINISHED).unlink()
    return filled
