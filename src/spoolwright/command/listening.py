"""A place to listen, and the server that listens there."""

import copy
import io
import os
import socket
from collections.abc import Callable
from pathlib import Path
from typing import Any

from waitress import create_server
from waitress.channel import HTTPChannel
from waitress.parser import HTTPRequestParser
from waitress.receiver import FixedStreamReceiver

USUAL_PORT = 8017
PORTS_TRIED = 100
SWALLOWED = 2 * 1024**3


class NoPort(Exception):
    """There is nowhere to listen; the words say what to do."""


def can_listen(host: str, port: int) -> bool:
    """Whether nobody else listens there."""
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with socket.socket(family, socket.SOCK_STREAM) as probe:
        if os.name != "nt":  # elsewhere the option would let two programs share one port
            probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except OSError:
            return False
    return True


def find_port(host: str, wanted: int | None, *, usual: int | None = None, option: str = "--port") -> int:
    """The wanted port, or from 8017 (or another usual one) on the first that is free; `option` names one."""
    if wanted:
        if can_listen(host, wanted):
            return wanted
        raise NoPort(
            f"Port {wanted} on {host} is taken by another program: choose another with {option}, or leave "
            f"{option} out and the next free one is used."
        )
    first = usual or USUAL_PORT
    for port in range(first, first + PORTS_TRIED):
        if can_listen(host, port):
            return port
    raise NoPort(f"No port from {first} to {first + PORTS_TRIED - 1} is free: name one with {option}.")


class Nothing:
    """A body that is taken off the wire and dropped, so that it fills neither memory nor disk."""

    def append(self, data: bytes) -> None:
        return None

    def __len__(self) -> int:
        return 0

    def getfile(self) -> io.BytesIO:
        return io.BytesIO()

    def close(self) -> None:
        return None


def server(application: Callable[..., Any], host: str, port: int, largest_upload: int) -> Any:
    """A waitress server that reads a body beyond the limit to its end without keeping it.

    Cutting the line instead would be quicker, but a browser that is still sending shows a dead connection and
    never the page that says why. What is above two gigabytes is cut all the same.
    """

    class Parser(HTTPRequestParser):
        def parse_header(self, header_plus: bytes) -> None:
            super().parse_header(header_plus)
            if self.chunked:  # says no length beforehand, so it is stopped at the limit
                self.adj = copy.copy(self.adj)
                self.adj.max_request_body_size = largest_upload
            elif self.content_length > largest_upload:
                self.body_rcv = FixedStreamReceiver(self.content_length, Nothing())

    class Channel(HTTPChannel):
        parser_class = Parser

    made = create_server(
        application, host=host, port=port, threads=4, ident=None, max_request_body_size=SWALLOWED
    )
    made.channel_class = Channel
    return made


def serve_with_processes(
    host: str, port: int, processes: int, *, encrypted: tuple[Path, Path] | None = None
) -> None:
    """Serve with processes of their own, for many hands at once; encrypted by a certificate and its key."""
    from granian import Granian
    from granian.constants import Interfaces

    certificate, key = encrypted or (None, None)
    Granian(
        "spoolwright.command.wsgi:application",
        address=host,
        port=port,
        interface=Interfaces.WSGI,
        workers=processes,
        blocking_threads=2,
        log_enabled=False,
        ssl_cert=certificate,
        ssl_key=key,
    ).serve()
