"""The encrypted door on the shop's network: what it prints, and that it is what it says."""

from __future__ import annotations

import hashlib
import io
import re
import socket
import ssl
import subprocess
import time
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from http.client import HTTPConnection, HTTPSConnection
from pathlib import Path

import pytest
import segno

from spoolwright.command import own_certificate, share
from spoolwright.command.own_certificate import OwnCertificate
from tests.unit.command.test_serve import command, surroundings

DARK = {" ": (1, 1), "▀": (0, 1), "▄": (1, 0), "█": (0, 0)}
"""What each character is of a code drawn in half blocks: dark above, dark below."""


@dataclass(frozen=True)
class Shared:
    port: int
    desk_port: int
    link: str
    fingerprint: str
    told: str
    certificate: Path

    def get(self, path: str, **headers: str) -> tuple[int, dict[str, str], bytes]:
        """Over TLS, trusting this one certificate and no other, its name checked."""
        line = HTTPSConnection(
            "127.0.0.1",
            self.port,
            timeout=20,
            context=ssl.create_default_context(cafile=str(self.certificate)),
        )
        line.request("GET", path, headers=headers)
        answer = line.getresponse()
        found = {name.lower(): value for name, value in answer.getheaders()}
        body = answer.read()
        line.close()
        return answer.status, found, body


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Shared]:
    data = tmp_path_factory.mktemp("shared") / "data"
    words = command(data, "--empty", "--share-at", "127.0.0.1")
    process = subprocess.Popen(
        words,
        env=surroundings(),
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
    )
    assert process.stdout
    told = ""
    try:
        while "Stop with Ctrl-C" not in told:
            line = process.stdout.readline()
            told += line
            assert line, f"it ended with {process.wait()}: {told}"
        desk = re.search(r"http://127\.0\.0\.1:(\d+)/sign-in/", told)
        link = re.search(r"https://127\.0\.0\.1:(\d+)/sign-in/\S+", told)
        assert desk
        assert link
        halves = re.findall(r"^  ((?:[0-9A-F]{2}:){15}[0-9A-F]{2})$", told, re.MULTILINE)
        certificate = data / own_certificate.FOLDER / own_certificate.CERTIFICATE
        served = Shared(int(link[1]), int(desk[1]), link[0], ":".join(halves), told, certificate)
        wait_for(served)
        yield served
    finally:
        process.terminate()
        process.wait(timeout=20)


def wait_for(shop: Shared) -> None:
    for _ in range(400):
        try:
            assert shop.get("/here/")[0] == 204
            return
        except ConnectionRefusedError:
            time.sleep(0.05)
    pytest.fail("the door was announced and does not open")


def test_what_answers_is_the_certificate_whose_fingerprint_was_printed(shop: Shared) -> None:
    shown = ssl.get_server_certificate(("127.0.0.1", shop.port))
    digest = hashlib.sha256(ssl.PEM_cert_to_DER_cert(shown)).hexdigest().upper()
    assert shop.fingerprint.replace(":", "") == digest
    assert shown.split() == shop.certificate.read_text().split()


def test_the_printed_code_holds_the_printed_link(shop: Shared) -> None:
    """Square by square against the code that the library makes (ISO/IEC 18004) of that very link."""
    drawn = [line for line in shop.told.splitlines() if line and set(line) <= set(DARK)]
    seen = [[DARK[one][half] for one in line] for line in drawn for half in (0, 1)]
    wanted = [list(row) for row in segno.make(shop.link, error="l", micro=False).matrix]
    cut = [row[4 : 4 + len(wanted)] for row in seen[4 : 4 + len(wanted)]]
    assert cut == wanted


def test_the_link_signs_in_with_a_cookie_for_encrypted_lines_only(shop: Shared) -> None:
    status, headers, body = shop.get(shop.link.partition(f":{shop.port}")[2])
    assert status == 200
    assert b"<form" in body
    assert "Secure" in headers["set-cookie"]


def test_a_browser_is_not_told_to_insist_on_a_certificate_of_our_own(shop: Shared) -> None:
    _, headers, _ = shop.get("/sign-in/")
    assert "strict-transport-security" not in headers
    assert "microphone=(self)" in headers["permissions-policy"]


def test_an_address_that_is_not_ours_is_refused(shop: Shared) -> None:
    assert shop.get("/sign-in/", Host="elsewhere.example")[0] == 400


def test_unencrypted_it_does_not_answer(shop: Shared) -> None:
    with socket.create_connection(("127.0.0.1", shop.port), timeout=10) as line:
        line.sendall(b"GET /here/ HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n")
        try:
            answer = line.recv(100)
        except ConnectionResetError:
            answer = b""
    assert not answer.startswith(b"HTTP")


def test_the_desk_keeps_its_own_door(shop: Shared) -> None:
    line = HTTPConnection("127.0.0.1", shop.desk_port, timeout=20)
    line.request("GET", "/sign-in/")
    answer = line.getresponse()
    assert answer.status == 200
    assert "Secure" not in answer.headers["set-cookie"]
    line.close()


def test_what_the_phone_will_say_is_said_beforehand(shop: Shared) -> None:
    told = " ".join(shop.told.split())
    assert "Only on a network of your own" in told
    assert "compare its fingerprint" in told


def test_a_screen_without_blocks_gets_the_link_alone(tmp_path: Path) -> None:
    made = OwnCertificate(tmp_path, tmp_path, ":".join(["AB"] * 32), datetime(2027, 1, 2, tzinfo=UTC), True)
    door = share.Door("192.168.1.20", 8443, made)
    plain = io.TextIOWrapper(io.BytesIO(), encoding="cp1252")
    told = share.told(door, door.address + "/sign-in/x/", plain)
    assert "https://192.168.1.20:8443/sign-in/x/" in told
    assert not any(set("▀▄█") & set(line) for line in told)
    assert any("2 January 2027" in line for line in told)


def test_on_a_screen_the_colours_are_said() -> None:
    (first, *_) = share.qr("https://192.168.1.20:8443/", in_colour=True)
    assert first.startswith("\x1b[97;40m█")
    assert first.endswith("\x1b[0m")
