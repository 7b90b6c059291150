"""The address that a phone can reach, and the refusals where there is none to share on."""

import socket
from typing import Any

import pytest

from spoolwright.command import own_network
from spoolwright.command.own_network import NotShared


def test_an_address_that_was_named_has_to_be_ours() -> None:
    assert own_network.address("127.0.0.1") == "127.0.0.1"
    with pytest.raises(NotShared, match=r"198\.51\.100\.7 is not an address of this computer"):
        own_network.address("198.51.100.7")


@pytest.mark.parametrize("named", ["bench", "192.168.1", "0.0.0.0", "::"])  # noqa: S104 (it is refused)
def test_what_is_no_single_address_is_refused_with_an_example(named: str) -> None:
    with pytest.raises(NotShared, match=r"Accepted: such as 192\.168\.1\.20"):
        own_network.address(named)


def test_without_a_network_it_says_to_connect(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(own_network, "_towards_the_router", lambda: "")
    monkeypatch.setattr(own_network, "addresses", list)
    with pytest.raises(NotShared, match="on no network"):
        own_network.address()


def test_an_address_open_to_the_world_is_not_shared_on_unasked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(own_network, "_towards_the_router", lambda: "8.8.4.4")
    with pytest.raises(NotShared, match="open to the whole internet"):
        own_network.address()


def test_addresses_that_stay_inside_are_left_out(monkeypatch: pytest.MonkeyPatch) -> None:
    told = [(0, 0, 0, "", (one, 0)) for one in ("192.168.1.20", "127.0.1.1", "10.0.0.4", "192.168.1.20")]
    monkeypatch.setattr(socket, "getaddrinfo", lambda *_: told)
    assert own_network.addresses() == ["10.0.0.4", "192.168.1.20"]


@pytest.mark.parametrize(
    ("name", "names"),
    [
        ("Bench.home.arpa", ["bench", "bench.local"]),
        ("localhost", []),
        ("bænk", []),
        ("two words", []),
    ],
)
def test_names_that_can_stand_in_a_certificate(
    monkeypatch: pytest.MonkeyPatch, name: str, names: list[str]
) -> None:
    monkeypatch.setattr(socket, "gethostname", lambda: name)
    assert own_network.names() == names


def test_a_name_that_leads_nowhere_gives_no_addresses(monkeypatch: pytest.MonkeyPatch) -> None:
    def nowhere(*_: Any) -> Any:
        raise socket.gaierror("no such name")

    monkeypatch.setattr(socket, "getaddrinfo", nowhere)
    assert own_network.addresses() == []
