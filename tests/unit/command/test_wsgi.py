"""The program as a web server sees it."""

from wsgiref.util import setup_testing_defaults

import pytest

from spoolwright.command.wsgi import application


@pytest.mark.usefixtures("own_database")
def test_it_answers_a_server() -> None:
    environ: dict[str, object] = {}
    setup_testing_defaults(environ)
    environ |= {"PATH_INFO": "/here/", "HTTP_HOST": "127.0.0.1"}
    began: list[str] = []
    body = b"".join(application(environ, lambda status, headers: began.append(status)))
    assert began == ["204 No Content"]
    assert body == b""
