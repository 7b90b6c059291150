"""The address under which other devices of the shop's own network reach this computer."""

from __future__ import annotations

import ipaddress
import socket

NOWHERE = ("192.0.2.1", 9)
"""An address kept for documentation (RFC 5737): asking for the way there sends nothing."""

NO_NETWORK = (
    "This computer is on no network that another device could reach it by: connect it, then start again, or "
    "name its address with --share-at."
)
PUBLIC = (
    "This computer's address {} is open to the whole internet, and sharing is for a network of one's own. "
    "Put a router between, or name an address with --share-at."
)


class NotShared(Exception):
    """There is no address to share on; the words say what to do."""


def address(named: str = "") -> str:
    """The address to share on: the one that was named, else this computer's on its own network."""
    if named:
        return _one_of_ours(named)
    found = _towards_the_router() or next(iter(addresses()), "")
    if not found:
        raise NotShared(NO_NETWORK)
    if not ipaddress.ip_address(found).is_private:
        raise NotShared(PUBLIC.format(found))
    return found


def addresses() -> list[str]:
    """All addresses of this computer that its name leads to, without those that stay inside it."""
    try:
        found = {str(told[4][0]) for told in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)}
    except OSError:
        return []
    return sorted(one for one in found if not ipaddress.ip_address(one).is_loopback)


def names() -> list[str]:
    """What this computer is called, by itself and by its neighbours."""
    name = socket.gethostname().partition(".")[0].lower()
    usable = name.isascii() and name.replace("-", "").isalnum() and name != "localhost"
    return [name, f"{name}.local"] if usable else []


def _towards_the_router() -> str:
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(NOWHERE)
        except OSError:
            return ""
        found = str(probe.getsockname()[0])
    return "" if found.startswith(("127.", "0.")) else found


def _one_of_ours(named: str) -> str:
    try:
        meant = ipaddress.ip_address(named)
    except ValueError:
        raise NotShared(f"“{named}” is no address. Accepted: such as 192.168.1.20.") from None
    if meant.version != 4 or meant.is_unspecified:
        raise NotShared(f"{named} is not one address to share on. Accepted: such as 192.168.1.20.")
    with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as probe:
        try:
            probe.bind((named, 0))
        except OSError:
            raise NotShared(f"{named} is not an address of this computer.") from None
    return named
