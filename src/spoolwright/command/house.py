"""Opens the shop's data folder: makes it and its secret key on a first start, and wakes Django over it."""

import os
import secrets
import subprocess
import sys
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parents[3]


def usual_folder() -> Path:
    """Where the shop's data lies unless told otherwise: beside run.py, or in the folder one stands in."""
    told = os.environ.get("SPOOLWRIGHT_DATA", "")
    if told:
        return Path(told)
    return (CHECKOUT if (CHECKOUT / "run.py").is_file() else Path.cwd()) / "shop-data"


def make_secret_key(folder: Path) -> None:
    """Write the key that signs sessions, readable by nobody else, unless there is one already."""
    kept = folder / "secret-key"
    try:
        handle = os.open(kept, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except FileExistsError:
        return
    with os.fdopen(handle, "w", encoding="ascii") as file:
        file.write(secrets.token_urlsafe(64))


def keep_compiled(folder: Path | str | None = None) -> None:
    """Say where compiled mechanics is kept: with the shop's data, where there is any and we may write.

    It has to be said before the compiler is imported. What lies there is run, so nobody else may write it.
    """
    data = Path(folder or usual_folder()).resolve()
    if folder or (data.is_dir() and os.access(data, os.W_OK)):
        os.environ.setdefault("NUMBA_CACHE_DIR", str(data / "compiled"))


def warm_up() -> None:
    """Have the cast compiled beside the server on a first start, so that the first to ask need not wait."""
    kept = os.environ.get("NUMBA_CACHE_DIR", "")
    if not kept or any(Path(kept).rglob("*.nbi")):
        return
    words = [sys.executable, "-c", "from spoolwright.mechanics import cast; cast.warm()"]
    silent = subprocess.DEVNULL
    subprocess.Popen(words, stdin=silent, stdout=silent, stderr=silent, start_new_session=True)


def answer_to(*names: str) -> None:
    """Have the shop answer under these names of this machine too, before Django wakes."""
    already = os.environ.get("SPOOLWRIGHT_ALLOWED_HOSTS", "")
    os.environ["SPOOLWRIGHT_ALLOWED_HOSTS"] = ",".join(name for name in (already, *names) if name)


def open_house(folder: Path | str | None = None) -> Path:
    """Make the folder ready, point the settings at it and set Django up; gives back the folder."""
    data = Path(folder or usual_folder()).resolve()
    data.mkdir(parents=True, exist_ok=True, mode=0o700)
    if not os.environ.get("SPOOLWRIGHT_SECRET_KEY"):
        make_secret_key(data)
    os.environ["SPOOLWRIGHT_DATA"] = str(data)
    keep_compiled(data)
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "spoolwright.settings")

    import django

    django.setup()
    return data
