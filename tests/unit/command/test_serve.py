"""The real server in a process of its own: first start, second start, headers, and what can go wrong."""

import json
import os
import re
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[3]


@dataclass(frozen=True)
class Served:
    port: int
    link: str
    told: str

    def get(self, path: str) -> tuple[int, dict[str, str], str]:
        line = HTTPConnection("127.0.0.1", self.port, timeout=20)
        line.request("GET", path)
        answer = line.getresponse()
        headers = {name.lower(): value for name, value in answer.getheaders()}
        body = answer.read().decode("utf-8", "replace")
        line.close()
        return answer.status, headers, body


def command(data: Path, *words: str) -> list[str]:
    return [sys.executable, "-m", "spoolwright.command", "serve", "--no-browser", "--data", str(data), *words]


def surroundings() -> dict[str, str]:
    return {k: v for k, v in os.environ.items() if not k.startswith(("SPOOLWRIGHT_", "DJANGO_"))}


@contextmanager
def serving(data: Path, *words: str) -> Iterator[Served]:
    """A shop that is open until the block ends."""
    process = subprocess.Popen(
        command(data, *words), env=surroundings(), stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
    )
    assert process.stdout
    told, link = "", None
    try:
        while not link:
            line = process.stdout.readline()
            told += line
            assert line, f"it ended with {process.wait()}: {told}"
            link = re.search(r"http://127\.0\.0\.1:(\d+)/sign-in/\S+", line)
        port = int(link[1])
        wait_for_answer(port)
        yield Served(port, link[0], told)
    finally:
        process.terminate()
        process.wait(timeout=20)


def wait_for_answer(port: int) -> None:
    for _ in range(200):
        try:
            line = HTTPConnection("127.0.0.1", port, timeout=10)
            line.request("GET", "/here/")
            assert line.getresponse().status == 204
            return
        except ConnectionRefusedError:
            time.sleep(0.05)
    pytest.fail("the server printed its link and does not answer")


@pytest.fixture(scope="module")
def data(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("shop") / "data"


@pytest.fixture(scope="module")
def shop(data: Path) -> Iterator[Served]:
    with serving(data, "--empty") as served:
        yield served


def test_a_first_start_makes_everything_and_opens(shop: Served, data: Path) -> None:
    assert "Making the tables" in shop.told
    assert {"secret-key", "shop.sqlite3", "static"} <= {path.name for path in data.iterdir()}
    assert shop.port >= 8017


def test_the_link_leads_to_a_button_and_a_stranger_to_the_door(shop: Served) -> None:
    status, _, body = shop.get(shop.link.partition(f":{shop.port}")[2])
    assert status == 200
    assert "<form" in body
    status, headers, _ = shop.get("/")
    assert status == 302
    assert headers["location"].startswith("/sign-in/")


def test_every_page_has_the_headers_that_close_it(shop: Served) -> None:
    _, headers, body = shop.get("/sign-in/")
    policy = headers["content-security-policy"]
    assert "default-src 'none'" in policy
    assert "unsafe" not in policy
    assert "frame-ancestors 'none'" in policy
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["x-frame-options"] == "DENY"
    assert headers["cross-origin-opener-policy"] == "same-origin"
    assert headers["referrer-policy"] in ("same-origin", "no-referrer")
    assert "camera=()" in headers["permissions-policy"]
    assert "server" not in headers
    assert "csrfmiddlewaretoken" in body


def test_cookies_stay_in_the_house(shop: Served) -> None:
    _, headers, _ = shop.get("/sign-in/")
    assert "HttpOnly" in headers["set-cookie"]
    assert "SameSite=Lax" in headers["set-cookie"]


def test_static_files_have_names_that_may_be_kept_for_ever(shop: Served) -> None:
    _, _, body = shop.get("/sign-in/")
    found = re.findall(r'(?:href|src)="(/static/[^"]+)"', body)
    assert found
    for path in found:
        assert re.search(r"\.[0-9a-f]{12}\.\w+$", path), path
        status, headers, _ = shop.get(path)
        assert status == 200
        assert "immutable" in headers["cache-control"]
        assert headers["x-content-type-options"] == "nosniff"


def test_a_page_that_is_not_there_says_so_without_telling_secrets(shop: Served) -> None:
    status, _, body = shop.get("/static/no-such-file.css")
    assert status in (302, 404)
    assert "Traceback" not in body
    assert "DEBUG" not in body


def test_a_second_start_makes_nothing_again(shop: Served, data: Path) -> None:
    """How long it takes is measured in tests/speed/start.py."""
    with serving(data) as again:
        assert "Making the tables" not in again.told
        assert again.port != shop.port, "the first one still listens, so the second takes the next port"


def test_a_start_brings_none_of_the_heavy_libraries() -> None:
    """They cost half a second and more each; a start that needs none of them must not wait for them."""
    heavy = "scipy", "typst", "vl_convert", "numba"
    asked = "import sys, spoolwright.command.serve; print(*(n for n in sys.argv[1:] if n in sys.modules))"
    told = subprocess.run(
        [sys.executable, "-c", asked, *heavy], env=surroundings(), capture_output=True, text=True, check=True
    )
    assert told.stdout.split() == []


def test_a_taken_port_that_was_asked_for_is_one_line(tmp_path: Path) -> None:
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = str(other.getsockname()[1])
        asked = command(tmp_path / "data", "--empty", "--port", port)
        done = subprocess.run(asked, env=surroundings(), capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert len(done.stderr.strip().splitlines()) == 1
    assert f"Port {port}" in done.stderr
    assert "--port" in done.stderr


def test_as_json_it_prints_one_object(tmp_path: Path) -> None:
    asked = command(tmp_path / "data", "--empty", "--json")
    with subprocess.Popen(
        asked, env=surroundings(), stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as shop:
        assert shop.stdout
        told = json.loads(shop.stdout.readline())
        shop.terminate()
        assert shop.stdout.read() == ""
    assert told["link"].startswith(told["address"] + "sign-in/")


def test_two_processes_serve_the_same_shop(tmp_path: Path) -> None:
    with serving(tmp_path / "data", "--empty", "--processes", "2") as shop:
        assert {shop.get("/sign-in/")[0] for _ in range(6)} == {200}


def test_a_full_disk_is_one_line(tmp_path: Path) -> None:
    if not Path("/dev/full").exists():
        pytest.skip("this system has no device that is always full")
    folder = tmp_path / "data"
    folder.mkdir()
    (folder / "static-collected").symlink_to("/dev/full")
    asked = command(folder, "--empty")
    done = subprocess.run(asked, env=surroundings(), capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert done.stderr.strip().splitlines()[-1].startswith("The disk is full")
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize(
    ("address", "said"),
    [
        ("postgresql://shop@127.0.0.1:1/shop", "does not let the shop in"),
        ("mysql://shop@127.0.0.1/shop", "cannot be read"),
    ],
)
def test_a_database_that_is_not_there_is_one_line(tmp_path: Path, address: str, said: str) -> None:
    env = {**surroundings(), "SPOOLWRIGHT_DATABASE_URL": address}
    asked = command(tmp_path / "data", "--empty")
    done = subprocess.run(asked, env=env, capture_output=True, text=True, check=False)
    assert done.returncode == 1
    (line,) = done.stderr.strip().splitlines()
    assert line.startswith(("The database that", "SPOOLWRIGHT_DATABASE_URL"))
    assert said in line
