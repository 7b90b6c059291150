"""Listens to a gauge on a serial port: USB, or Bluetooth that looks like one. What came is kept."""

from __future__ import annotations

import errno
import time
from collections.abc import Callable
from typing import TYPE_CHECKING

from spoolwright.bench.gauge_lines import GaugeLog
from spoolwright.bench.gauge_protocol import GaugeProtocol

if TYPE_CHECKING:
    from serial import Serial

WAITS = 0.05
"""Seconds that one look at the port waits: as long as it takes until a Stop is heard."""

SILENT = 5.0
"""Seconds without a number after which something is said."""

UNPLUGGED = "The gauge was unplugged, or its line broke."
FULL = "As much as one log holds has come; it stopped by itself."


class NoGauge(Exception):
    """The port cannot be listened to; the words say why and what to do."""


def ports() -> list[str]:
    """Serial ports that this computer has."""
    from serial.tools import list_ports

    return sorted(port.device for port in list_ports.comports())


def open_port(name: str, protocol: GaugeProtocol) -> Serial:
    """The port, opened for us alone."""
    import serial

    parity = {"none": serial.PARITY_NONE, "even": serial.PARITY_EVEN, "odd": serial.PARITY_ODD}
    try:
        return serial.Serial(
            name,
            protocol.baud,
            bytesize=protocol.bits,
            parity=parity[protocol.parity],
            stopbits=protocol.stop,
            timeout=WAITS,
            write_timeout=1.0,
            exclusive=True,
        )
    except (OSError, ValueError) as fault:
        raise NoGauge(_why_shut(name, fault)) from fault


def _why_shut(name: str, fault: Exception) -> str:
    number = getattr(fault, "errno", None)
    if number in (errno.EACCES, errno.EPERM):
        return (
            f"{name} may not be opened by you. On Linux your account has to be in the group that the port "
            "belongs to (often dialout); then sign in again."
        )
    if number in (errno.EBUSY, errno.EAGAIN, errno.EWOULDBLOCK):
        return f"{name} is held by another program: close that, then start again."
    there = ", ".join(ports())
    known = f"Ports that are there: {there}." if there else "This computer has no serial port just now."
    if number == errno.ENOENT or "FileNotFoundError" in str(fault):
        return f"There is no port {name}. {known} Is the gauge plugged in, or paired?"
    return f"{name} cannot be opened as a serial port ({fault}). {known}"


def listen(
    port: Serial,
    log: GaugeLog,
    goes_on: Callable[[], bool],
    told: Callable[[list[float]], None] = lambda new: None,
    clock: Callable[[], float] = time.monotonic,
) -> str:
    """Read into the log until `goes_on` says no; says why it ended otherwise. `told` hears of each look."""
    asked = float("-inf")
    try:
        while goes_on():
            if log.is_full:
                return FULL
            if log.protocol.request and clock() - asked >= log.protocol.every:
                port.write(log.protocol.request.encode("ascii"))
                asked = clock()
            data = port.read(max(1, min(port.in_waiting, 4096)))
            new = log.take(data, clock()) if data else []
            told(new)
    except OSError:  # pyserial's own faults are OSErrors too
        return UNPLUGGED
    return ""


def silence(log: GaugeLog, seconds: float) -> str:
    """What to look at when no number has come for so long; nothing while all is well."""
    if log.pulls or seconds < SILENT:
        return ""
    if said := log.complaint():
        return said
    ask = "" if log.protocol.request else " Does it send by itself, or has it to be asked (request)?"
    return f"Nothing has come in {seconds:.0f} s at {log.protocol.baud} baud. Is the gauge on?{ask}"
