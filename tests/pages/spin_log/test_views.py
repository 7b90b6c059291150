"""The spin log in the browser: the shop's own spins, a file looked at, a file refused."""

from __future__ import annotations

from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from spoolwright.shop.questions.spin_log import own_spins
from tests.shop import walk

LOG = b"bearing,reel,time\nsteel,A,40\nsteel,B,44\nsteel,C,42\ngreased,D,9\ngreased,E,10\ngreased,F,9.5\n"


def page(answer: Any) -> str:
    return answer.content.decode()


def test_an_empty_shop_says_that_nothing_can_be_compared(bench: Client) -> None:
    answer = bench.get("/spin-log/")
    assert answer.status_code == 200
    assert "Nothing can be compared yet" in page(answer)


def test_a_file_is_drawn_with_its_sentences_and_not_kept(bench: Client) -> None:
    answer = bench.post("/spin-log/", {"file": SimpleUploadedFile("log.csv", LOG)})
    assert answer.status_code == 200
    assert answer.context["of_file"]["chart"].spec["description"].startswith("Spin times of 2 kinds")
    assert "times as long as" in page(answer)
    assert "not kept" in page(answer)
    assert own_spins() == ()


def test_another_file_is_refused_in_words(bench: Client) -> None:
    for data, words in ((b"a,b\n1,2\n", "bearing and time"), (b"bearing,time\nsteel,4\n", "1 kind")):
        answer = bench.post("/spin-log/", {"file": SimpleUploadedFile("log.csv", data)})
        assert answer.status_code == 422
        assert words in page(answer)


def test_the_shops_own_spins_know_which_bearing_turned(bench: Client, torbal: Any) -> None:
    from spoolwright.sheets import reel_sheet
    from spoolwright.shop.acts.add_sheet_version import add_sheet_version

    visit = walk.agreed(torbal)
    free = {"line": "off", "brakes": "off", "temperature": 292.0}
    walk.read(torbal, visit, "spin_time", 14.0, 0.3, "time", conditions=free)
    assert own_spins() == ()
    version = add_sheet_version(hand=torbal, toml=reel_sheet.shipped()["tarvak-52"])
    type(visit.reel).objects.filter(pk=visit.reel_id).update(sheet_version=version)
    assert own_spins() == ()  # as it came in: dirt and old oil, not bearings
    walk.worked(torbal, visit)
    walk.read(torbal, visit, "spin_time", 41.0, 0.3, "time", conditions=free)
    found = own_spins()
    assert [(spin.kind, spin.time) for spin in found] == [("stainless", 41.0)]
