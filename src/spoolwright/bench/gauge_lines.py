"""What comes from a gauge on a serial line, byte by byte, to pulls with their times; garbage is counted."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from spoolwright.bench.gauge_protocol import DECIMALS, SEPARATORS, TERMINATORS, GaugeProtocol
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, read

LONGEST_LINE = 200
"""Bytes without an end of line after which what came is thrown away as garbage."""

MOST = 60_000
"""Numbers of one log: ten minutes of a gauge that sends a hundred a second."""

CSV_HEAD = "time_s,force_n\n"
"""First row of a log as a file that the reader of pull traces takes."""

MOST_PULL = 1e5
"""N; ten tonnes at the line is a broken line of text, not a pull."""

_NUMBER = re.compile(r"(?P<sign>[+-]?)\s*(?P<digits>\d{1,9}(?:\.\d{0,9})?|\.\d{1,9})\s*(?P<unit>[A-Za-z]*)")
_ENOUGH = 10
"""Lines after which it can be said that none of them is a number."""


def pull_of(line: str, protocol: GaugeProtocol) -> float:
    """The pull in one line of a gauge.

    Parameters
    ----------
    line : str
        The text without its end [-].
    protocol : GaugeProtocol
        How this gauge talks [-].

    Returns
    -------
    float
        Pull [N]; below zero where the gauge shows it so.

    Raises
    ------
    Unreadable
        No number where it should stand, no unit, a unit that is none of a pull.

    Source
    ------
    Our own rules.

    Examples
    --------
    >>> say = GaugeProtocol(separator="comma", field=3)
    >>> round(pull_of("A,7,+  2.350kg", say), 3)
    23.046
    """
    mark = SEPARATORS[protocol.separator]
    parts = line.split(mark) if mark else _together(line)
    if len(parts) < protocol.field:
        raise Unreadable(f"it has {len(parts)} parts", _shown(line), f"a number in part {protocol.field}")
    text = parts[protocol.field - 1].strip()
    if protocol.decimal != DECIMALS[0]:
        text = text.replace(",", ".")
    found = _NUMBER.fullmatch(text)
    if not found:
        raise Unreadable("it holds no number where it should", _shown(line), f"one in part {protocol.field}")
    unit = found["unit"] or _unit_beside(parts, protocol) or protocol.unit
    if not unit:
        raise Unreadable("the gauge names no unit", _shown(line), 'unit = "kg" in its description, or --unit')
    pull = _in_newtons(f"{found['sign']}{found['digits']}", unit, line)
    if abs(pull) > MOST_PULL:
        raise Unreadable("no line holds such a pull", _shown(line), f"up to {MOST_PULL:g} N")
    return pull


def _in_newtons(number: str, unit: str, line: str) -> float:
    try:
        return read(f"{number} {unit}", "force")
    except NotAQuantity as fault:
        raise Unreadable(f"“{unit}” is no unit of a pull", _shown(line), fault.accepted) from fault


def _together(line: str) -> list[str]:
    """Parts between spaces; a sign and a unit that stand apart from the number belong to it."""
    joined = re.sub(r"([+-])\s+(?=[\d.])", r"\1", line.strip())
    return re.sub(r"(\d)\s+(?=[A-Za-z]+(?:\s|$))", r"\1", joined).split()


def _unit_beside(parts: list[str], protocol: GaugeProtocol) -> str:
    return parts[protocol.unit_field - 1].strip() if 0 < protocol.unit_field <= len(parts) else ""


def _shown(line: str) -> str:
    plain = "".join(one if one.isascii() and one.isprintable() else "·" for one in line[:40])
    return f"“{plain}”"


@dataclass
class GaugeLog:
    """All that came from a gauge so far: times [s] and pulls [N], and what was no number.

    `unread` lines were no numbers; `why_unread` says of the first of them why. `dropped` bytes came without
    an end of line.
    """

    protocol: GaugeProtocol
    times: list[float] = field(default_factory=list)
    pulls: list[float] = field(default_factory=list)
    unread: int = 0
    why_unread: str = ""
    dropped: int = 0
    strange: int = 0
    _waiting: bytes = b""

    @property
    def is_full(self) -> bool:
        return len(self.pulls) >= MOST

    def take(self, data: bytes, at: float) -> list[float]:
        """Read on: the pulls that came to their end with these bytes, which arrived at this time [s].

        A line ended when its last byte came, which is as many bytes before the arrival as follow it.
        """
        self.strange += sum(1 for byte in data if byte > 126 or (byte < 32 and byte not in b"\r\n\t\x02\x03"))
        *lines, self._waiting = (self._waiting + data).split(TERMINATORS[self.protocol.terminator])
        end = len(TERMINATORS[self.protocol.terminator])
        after = len(self._waiting) + sum(len(line) + end for line in lines)
        found: list[tuple[float, float]] = []
        for line in lines:
            after -= len(line) + end
            pull = self._read(line)
            if pull is not None:
                found.append((at - after * self.protocol.per_byte, pull))
        if len(self._waiting) > LONGEST_LINE:
            self.dropped += len(self._waiting)
            self._waiting = b""
        return self._put(found)

    def _put(self, found: list[tuple[float, float]]) -> list[float]:
        room = found[: max(0, MOST - len(self.pulls))]
        for moment, pull in room:
            self.times.append(max(moment, self.times[-1] if self.times else moment))
            self.pulls.append(pull)
        return [pull for _, pull in room]

    def _read(self, line: bytes) -> float | None:
        text = line.decode("ascii", "replace").strip(" \r\n\t\x00\x02\x03")
        if not text:
            return None
        try:
            return pull_of(text, self.protocol)
        except Unreadable as fault:
            self.unread += 1
            self.why_unread = self.why_unread or fault.words
            return None

    def complaint(self) -> str:
        """Why nothing of what came can be read, in words; empty while there is nothing to complain of."""
        if self.pulls:
            return ""
        baud = self.protocol.baud
        if self.strange > _ENOUGH:
            return (
                f"What comes at {baud} baud is no text: is the speed right, and bits and parity? "
                "The gauge's handbook says what it sends."
            )
        if self.unread >= _ENOUGH or (self.unread and "names no unit" in self.why_unread):
            return f"None of {self.unread} lines holds a pull. {self.why_unread}"
        if self.dropped:
            ends = self.protocol.terminator
            return f"{self.dropped} letters came and no end of a line ({ends}): is the terminator right?"
        return ""

    def csv_rows(self, begin: int = 0) -> Iterator[str]:
        """Rows below `CSV_HEAD` from this number on: seconds from the first number, newtons."""
        first = self.times[0] if self.times else 0.0
        for moment, pull in zip(self.times[begin:], self.pulls[begin:], strict=True):
            yield f"{moment - first:.4f},{pull:.4f}\n"
