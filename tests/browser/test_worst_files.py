"""The worst files sent to the running server as a phone sends them: refused in words, and it answers on."""

from __future__ import annotations

import re
from http.client import HTTPConnection
from typing import Any
from urllib.parse import urlsplit

from django.test.client import BOUNDARY, MULTIPART_CONTENT, encode_multipart

from spoolwright.shop.questions.diary import diary
from tests import hostile
from tests.browser.conftest import cookie_of
from tests.pages.diary.at_the_desk import SPIN, arrived, file, way

WORST = ("hours of FLAC", "MOV of NaN", "zip of zeros", "a level")


def asked(
    address: str, path: str, cookies: dict[str, str], body: bytes | None = None
) -> tuple[int, str, str]:
    """One request on a line of its own: status, cookies that were set, text."""
    line = HTTPConnection(urlsplit(address).netloc, timeout=60)
    sent = {"Cookie": "; ".join(f"{name}={value}" for name, value in cookies.items())}
    if body is not None:
        sent["Content-Type"] = MULTIPART_CONTENT
    line.request("GET" if body is None else "POST", path, body, sent)
    answer = line.getresponse()
    told = answer.read().decode()
    line.close()
    return answer.status, answer.getheader("Set-Cookie") or "", told


def test_the_worst_files_are_refused_and_the_server_answers_on(shop: Any) -> None:
    visit = arrived(shop.bench)
    path = way(visit, "spin")
    signed_in = cookie_of(shop.bench)
    cookies = {signed_in["name"]: signed_in["value"]}
    status, set_cookie, page = asked(shop.address, path, cookies)
    assert status == 200
    name, _, value = set_cookie.partition(";")[0].partition("=")
    cookies[name] = value
    token = re.search(r'name="csrfmiddlewaretoken" value="(\w+)"', page)
    assert token
    for what, data in hostile.named(WORST).items():
        form = SPIN | {"do": "look", "csrfmiddlewaretoken": token[1], "words": "typed before"}
        body = encode_multipart(BOUNDARY, form | {"signal": file(data, "spin.m4a", "audio/mp4")})
        status, _, told = asked(shop.address, path, cookies, body)
        assert status == 422, what
        assert "Accepted:" in told, what
        assert "typed before" in told, what
    assert asked(shop.address, path, cookies)[0] == 200
    assert len(diary(visit.pk).blocks) == 1
