"""Finding a port, and a server that takes a body which is too large off the wire and answers all the same."""

import contextlib
import http.client
import io
import socket
import threading
from collections.abc import Callable, Iterable, Iterator
from typing import Any

import pytest

from spoolwright.command import listening

LIMIT = 1024 * 1024


@pytest.fixture
def taken() -> Iterator[int]:
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        yield other.getsockname()[1]


def test_a_wanted_port_that_is_free_is_taken(taken: int) -> None:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        free = probe.getsockname()[1]
    assert listening.find_port("127.0.0.1", free) == free


def test_a_wanted_port_that_is_taken_says_what_to_do(taken: int) -> None:
    with pytest.raises(listening.NoPort, match=rf"Port {taken} .* is taken .* --port"):
        listening.find_port("127.0.0.1", taken)
    with pytest.raises(listening.NoPort, match="with --share-port, or leave --share-port out"):
        listening.find_port("127.0.0.1", taken, option="--share-port")


def test_the_next_free_port_follows_one_that_is_taken(taken: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(listening, "USUAL_PORT", taken)
    assert taken < listening.find_port("127.0.0.1", None) < taken + listening.PORTS_TRIED


def test_no_port_at_all_is_said(taken: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(listening, "USUAL_PORT", taken)
    monkeypatch.setattr(listening, "PORTS_TRIED", 1)
    with pytest.raises(listening.NoPort, match="is free"):
        listening.find_port("127.0.0.1", None)


def counts_what_came(environ: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
    """A program that says how much it was told would come, and how much it could read."""
    came = len(environ["wsgi.input"].read())
    start("200 OK", [("Content-Type", "text/plain")])
    return [f"told {environ.get('CONTENT_LENGTH')} came {came}".encode()]


def until_closed(serving: Any) -> None:
    """Serves until the test is over; the socket closed under its select is how it ends."""
    with contextlib.suppress(OSError):
        serving.run()


@pytest.fixture
def connection() -> Iterator[http.client.HTTPConnection]:
    serving = listening.server(counts_what_came, "127.0.0.1", 0, LIMIT)
    threading.Thread(target=until_closed, args=(serving,), daemon=True).start()
    client = http.client.HTTPConnection("127.0.0.1", serving.effective_port, timeout=20)
    yield client
    client.close()
    serving.close()


def answer(client: http.client.HTTPConnection, size: int) -> str:
    client.request("POST", "/", body=io.BytesIO(b"x" * size), headers={"Content-Length": str(size)})
    return client.getresponse().read().decode()


def test_a_body_within_the_limit_arrives(connection: http.client.HTTPConnection) -> None:
    assert answer(connection, LIMIT) == f"told {LIMIT} came {LIMIT}"


def test_a_body_beyond_the_limit_is_dropped_and_the_program_is_told_its_size(
    connection: http.client.HTTPConnection,
) -> None:
    assert answer(connection, 8 * LIMIT) == f"told {8 * LIMIT} came 0"


def test_the_line_lives_on_after_it(connection: http.client.HTTPConnection) -> None:
    answer(connection, 8 * LIMIT)
    assert answer(connection, 10) == "told 10 came 10"


def test_a_body_without_a_length_is_stopped_at_the_limit(connection: http.client.HTTPConnection) -> None:
    pieces = (b"x" * 65_536 for _ in range(64))
    try:
        connection.request(
            "POST", "/", body=pieces, encode_chunked=True, headers={"Transfer-Encoding": "chunked"}
        )
    except (BrokenPipeError, ConnectionResetError):
        return  # the server had already closed the line
    assert connection.getresponse().status == 413
