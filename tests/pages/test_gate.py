"""What every request passes: the size limit and the device features."""

from pathlib import Path

import pytest
from django.conf import settings
from django.contrib.staticfiles import finders
from django.http import HttpRequest, HttpResponse
from django.test import Client, RequestFactory

from spoolwright.pages.gate import declared_size, megabytes, refuse_large_uploads, shut_device_features


def let_through(request: HttpRequest) -> HttpResponse:
    return HttpResponse("let through")


@pytest.mark.django_db
@pytest.mark.parametrize("as_fragment", [False, True])
def test_an_upload_that_is_too_large_is_refused_in_words(client: Client, as_fragment: bool) -> None:
    headers = {"HX-Request": "true"} if as_fragment else {}
    answer = client.generic("POST", "/sign-in/", b"x", CONTENT_LENGTH=200 * 1024 * 1024, headers=headers)
    told = answer.content.decode()
    assert answer.status_code == 413
    assert "200 MB" in told
    assert "up to\n192 MB" in told
    assert ("<html" in told) is not as_fragment
    assert "Content-Security-Policy" in answer.headers


def test_the_page_says_the_same_limit_before_anything_is_sent() -> None:
    script = finders.find("diary/diary.js")
    assert script
    assert f"LARGEST = {megabytes(settings.LARGEST_FILE)};" in Path(script).read_text(encoding="utf-8")


def test_ten_minutes_of_stereo_wav_are_taken() -> None:
    assert settings.LARGEST_FILE > 600 * 48_000 * 2 * 3


def test_an_upload_within_the_limit_goes_through() -> None:
    request = RequestFactory().post("/", CONTENT_LENGTH=str(settings.LARGEST_UPLOAD))
    assert refuse_large_uploads(let_through)(request).content == b"let through"


@pytest.mark.parametrize(("said", "size"), [("", 0), ("12", 12), ("-1", 0), ("many", 0), ("\u0663", 0)])
def test_a_length_that_is_none_counts_as_nothing(said: str, size: int) -> None:
    request = RequestFactory().get("/")
    request.META["CONTENT_LENGTH"] = said
    assert declared_size(request) == size


def test_no_page_may_look_and_only_our_own_may_ask_to_listen() -> None:
    answer = shut_device_features(let_through)(RequestFactory().get("/"))
    assert "microphone=(self)" in answer["Permissions-Policy"]
    assert "camera=()" in answer["Permissions-Policy"]
