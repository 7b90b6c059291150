"""What has to fit together: a mass with its line, water with its hour, a twin with its mark."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.pages.arrival.sending import refused, send, visit
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


def test_a_mass_says_whether_the_line_was_on(desk: Client) -> None:
    assert refused(send(desk, r0_mass="338 g"), "r0_mass_line")


def test_under_water_says_when_and_not_tomorrow(desk: Client) -> None:
    assert refused(send(desk, r0_under_water="yes"), "r0_under_water_at")
    tomorrow = timezone.localtime(timezone.now() + timedelta(days=1)).strftime("%Y-%m-%dT%H:%M")
    assert refused(send(desk, r0_under_water="yes", r0_under_water_at=tomorrow), "r0_under_water_at")


def test_two_alike_in_one_parcel_need_a_difference(desk: Client) -> None:
    add_sheet_version(hand=bench_hand(), toml=reel_sheet.shipped()["tarvak-58r"])
    twins = {"count_0": "2", "r1_sheet": "tarvak-58r", "r1_described": "", "r0_described": "tarvak 58r "}
    assert refused(send(desk, **twins), "r1_twin_mark")
    assert send(desk, **twins, r1_twin_mark="red dot under the foot").status_code == 302
    assert [mark.words for mark in visit(2).reel.marks.all()] == ["red dot under the foot"]


def test_reels_that_differ_need_none(desk: Client) -> None:
    assert send(desk, count_0="2", r1_described="Tarvak 52").status_code == 302
