"""How a gauge on a serial line talks: its line settings, and where in a line of text the pull stands."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, read

BAUDS = (1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200, 230400)
PARITIES = ("none", "even", "odd")
TERMINATORS = {"lf": b"\n", "cr": b"\r", "crlf": b"\r\n"}
DECIMALS = ("point", "comma")
SEPARATORS = {"space": "", "comma": ",", "semicolon": ";", "tab": "\t", "colon": ":"}
LONGEST_REQUEST = 40

_WHOLE = {"baud": BAUDS, "bits": (7, 8), "stop": (1, 2), "field": range(1, 33), "unit_field": range(33)}
_WORDS = {
    "parity": PARITIES,
    "terminator": tuple(TERMINATORS),
    "decimal": DECIMALS,
    "separator": tuple(SEPARATORS),
}


@dataclass(frozen=True)
class GaugeProtocol:
    """A gauge's line, as its handbook describes it. The defaults suit one that sends "2.35 kg" by itself.

    baud, bits, parity, stop: the line. terminator: what ends a line of text. separator, field: what parts a
    line, and which part holds the pull, counted from 1. unit: of numbers that carry none; unit_field: the
    part that holds it, 0 for none. decimal: the mark. request: what is sent to ask for a number, "" where
    the gauge sends by itself; every: seconds between two requests.
    """

    baud: int = 9600
    bits: int = 8
    parity: str = "none"
    stop: int = 1
    terminator: str = "lf"
    separator: str = "space"
    field: int = 1
    unit: str = ""
    unit_field: int = 0
    decimal: str = "point"
    request: str = ""
    every: float = 0.1

    @property
    def per_byte(self) -> float:
        """Seconds that one byte takes on the line: a start bit, the data, parity, stop bits."""
        return (1 + self.bits + (self.parity != "none") + self.stop) / self.baud


def read_toml(text: str, name: str = "") -> GaugeProtocol:
    """A gauge's description from TOML: any of the names of `GaugeProtocol`, nothing else.

    Parameters
    ----------
    text : str
        The description [-], such as 'baud = 4800' and 'unit = "kg"', a line each.
    name : str
        What the file is called [-]; only for messages.

    Returns
    -------
    GaugeProtocol
        What was said, and the usual where nothing was [-].

    Raises
    ------
    Unreadable
        No TOML, an unknown name, a value that no line has.

    Source
    ------
    Names and choices: our own, for what handbooks of gauges with a serial line say (common practice).

    Examples
    --------
    >>> read_toml('baud = 4800\\nunit = "kg"\\nrequest = "D\\\\r"').per_byte * 4800
    10.0
    """
    try:
        told = tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise Unreadable(
            f"it is no TOML ({fault})", name, 'lines such as baud = 9600 or unit = "kg"'
        ) from fault
    return from_mapping(told, name)


def from_mapping(told: Mapping[str, Any], name: str = "") -> GaugeProtocol:
    """The same from plain data, each value looked at.

    Parameters
    ----------
    told : mapping
        Names of `GaugeProtocol` and their values [-].
    name : str
        Where it comes from [-]; only for messages.

    Returns
    -------
    GaugeProtocol
        What was said, and the usual where nothing was [-].

    Raises
    ------
    Unreadable
        An unknown name, a value that no line has.

    Source
    ------
    As `read_toml`.

    Examples
    --------
    >>> from_mapping({"decimal": "comma"}).decimal
    'comma'
    """
    known = [field.name for field in fields(GaugeProtocol)]
    for key, value in told.items():
        if key not in known:
            raise Unreadable(f"“{key}” is nothing that is known of a gauge", name, ", ".join(known))
        _check(key, value, name)
    return GaugeProtocol(**told)


def _check(key: str, value: Any, name: str) -> None:
    where = f"{name}, {key}" if name else key
    if key in _WHOLE:
        if type(value) is not int or value not in _WHOLE[key]:
            choices = ", ".join(map(str, _WHOLE[key])) if len(_WHOLE[key]) < 10 else f"{_WHOLE[key][0]} to 32"
            raise Unreadable(f"“{value}” cannot be", where, choices)
    elif key in _WORDS:
        if value not in _WORDS[key]:
            raise Unreadable(f"“{value}” cannot be", where, ", ".join(_WORDS[key]))
    elif key == "every":
        if isinstance(value, bool) or not isinstance(value, (int, float)) or not 0.01 <= value <= 60:
            raise Unreadable(f"“{value}” cannot be", where, "0.01 to 60, in seconds")
    elif key == "request":
        if not isinstance(value, str) or not value.isascii() or len(value) > LONGEST_REQUEST:
            raise Unreadable(f"“{value}” cannot be sent", where, f"up to {LONGEST_REQUEST} plain letters")
    else:
        _check_unit(value, where)


def _check_unit(value: Any, where: str) -> None:
    if value == "":
        return
    try:
        read(f"1 {value}", "force")
    except NotAQuantity as fault:
        raise Unreadable(f"“{value}” is no unit of a pull", where, fault.accepted) from fault
