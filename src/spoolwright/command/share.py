"""The door for the shop's own network: encrypted, for one address, with a QR code that a phone reads.

The desk keeps its own door at 127.0.0.1. The second one is a process of its own with the same data, so that
its cookies can be for encrypted connections only without shutting the desk out.
"""

from __future__ import annotations

import io
import multiprocessing
import os
import threading
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO

from spoolwright.command import house, listening, own_certificate, own_network
from spoolwright.command.own_certificate import OwnCertificate

USUAL_PORT = 8443
LIGHT_ON_DARK = "\x1b[97;40m{}\x1b[0m"
"""The blocks are the light squares: on a light screen they would be dark, and the code turned about."""
CAUTIONS = (
    "Only on a network of your own: whoever is in it can reach this door, though nobody passes it who has",
    "not signed in. The phone warns that nobody vouches for the certificate: the shop made it itself. Let",
    "the phone show it, compare its fingerprint with the one above, and go on only where they are the",
    "same. Else somebody stands between.",
)


@dataclass(frozen=True)
class Door:
    """Where the shop is open to its network, and what proves that it is this shop."""

    host: str
    port: int
    certificate: OwnCertificate

    @property
    def address(self) -> str:
        return f"https://{self.host}:{self.port}"


def open_door(data: Path, named: str, port: int | None) -> Door:
    """Find the address and a port, and have a certificate for them. Nothing listens yet."""
    host = own_network.address(named)
    names = [host, *own_network.addresses(), *own_network.names(), "localhost", "127.0.0.1"]
    certificate = own_certificate.certificate_for(data, names)
    free = listening.find_port(host, port, usual=USUAL_PORT, option="--share-port")
    return Door(host, free, certificate)


def told(door: Door, link: str, screen: TextIO) -> list[str]:
    """What stands on the screen for the person with the phone."""
    lines = [f"For the phone: {door.address}/"]
    if can_draw(screen):
        lines.append("Point its camera at this; the link in it signs you in, once, within 15 minutes:")
        lines += qr(link, in_colour=screen.isatty())
    else:
        lines.append("This link signs the phone in, once, within 15 minutes:")
    lines += [link, "", f"The certificate, made here, good until {door.certificate.ends:%d %B %Y}."]
    halves = door.certificate.fingerprint[:47], door.certificate.fingerprint[48:]
    return [*lines, "Its fingerprint (SHA-256):", *(f"  {half}" for half in halves), *CAUTIONS]


def qr(link: str, *, in_colour: bool = False) -> list[str]:
    """The link as a QR code in half blocks, line by line; a block is light, a gap is dark."""
    import segno

    drawn = io.StringIO()
    segno.make(link, error="l", micro=False).terminal(drawn, border=4, compact=True)
    lines = drawn.getvalue().splitlines()
    return [LIGHT_ON_DARK.format(line) for line in lines] if in_colour else lines


def can_draw(screen: TextIO) -> bool:
    """Whether the screen has the blocks that a QR code is drawn with."""
    try:
        "▀▄█".encode(screen.encoding or "ascii")
    except (LookupError, UnicodeEncodeError):
        return False
    return True


def serve(door: Door, desk: Callable[[], None], processes: int) -> None:
    """Both doors until Ctrl-C: the desk's in a thread, the network's in processes with their own settings."""
    # A process that is only a copy of this one would keep its settings, and a thread's half-held locks.
    multiprocessing.set_start_method("spawn", force=True)
    os.environ["SPOOLWRIGHT_HTTPS"] = "own"
    house.answer_to(door.host, *own_network.names())
    threading.Thread(target=desk, daemon=True).start()
    certificate = door.certificate
    listening.serve_with_processes(
        door.host, door.port, processes, encrypted=(certificate.certificate, certificate.key)
    )
