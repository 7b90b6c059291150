"""A spin log out of a text file: one spin a row, columns named bearing, time, and if told reel and side."""

from __future__ import annotations

import csv
import io

from spoolwright.bench import file_text
from spoolwright.bench.spin_log import Spin
from spoolwright.bench.unreadable import Unreadable

NAMES = {
    "kind": ("bearing", "kind", "bearing kind"),
    "time": ("time", "time_s", "seconds", "spin time"),
    "unit": ("reel", "spinner", "unit", "tag"),
    "side": ("side", "top", "turned"),
}
"""What each column may be called; the first two are needed."""

MOST = 5000

_ACCEPTED = "one spin a row with the columns bearing and time (s), and if you like reel and side"


def read(data: bytes, *, name: str = "") -> tuple[Spin, ...]:
    """The spins in a file.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    tuple of Spin
        Spins [s] in the order of the file.

    Raises
    ------
    Unreadable
        No text, no such columns, a time that is no number, more than five thousand rows.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> read(b"bearing,time,reel\\nopen steel,140,A\\n")[0].time
    140.0
    """
    text, _ = file_text.decode(data, name)
    first = text.lstrip().splitlines()[0] if text.strip() else ""
    mark = max(",;\t", key=first.count)
    rows = list(csv.DictReader(io.StringIO(text.strip()), delimiter=mark))
    titles = {title.strip().lower(): title for title in (rows[0] if rows else {}) if title}
    found = {key: next((titles[n] for n in names if n in titles), "") for key, names in NAMES.items()}
    if not rows or not found["kind"] or not found["time"]:
        raise Unreadable("the file has no columns called bearing and time", name, _ACCEPTED)
    if len(rows) > MOST:
        raise Unreadable(f"the file holds {len(rows)} spins", name, f"{MOST} spins or fewer")
    return tuple(_spin(row, found, f"{name}, row {k}") for k, row in enumerate(rows, start=2))


def _spin(row: dict[str, str], found: dict[str, str], where: str) -> Spin:
    kind, typed = ((row.get(found[key]) or "").strip() for key in ("kind", "time"))
    if not kind:
        raise Unreadable("a spin has no kind of bearing", where, _ACCEPTED)
    try:
        time = float(typed.replace(",", "."))
    except ValueError:
        raise Unreadable(f"“{typed}” is no time", where, "seconds, such as 14.5") from None
    unit, side = ((row.get(found[key]) or "").strip() if found[key] else "" for key in ("unit", "side"))
    return Spin(kind, unit or kind, side, time)
