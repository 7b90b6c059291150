"""The arrival on one page: written in one go, everything typed kept until then, the number given at once."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.test import Client
from django.utils import timezone

from spoolwright.shop.questions.on_the_bench import on_the_bench
from tests.pages.arrival.sending import arrival, photo, refused, send, visit

pytestmark = pytest.mark.django_db


def test_whose_it_is_and_what_it_is_are_enough(desk: Client) -> None:
    response = send(desk)
    assert response.status_code == 302
    page = desk.get(response.headers["Location"]).content.decode()
    assert "Number 1 is written." in page
    assert "Tarvak 58R" in page
    assert visit(1).reel.customer.name == "Ragna Solbu"


def test_the_pier_reel_of_scenario_1_as_it_came(desk: Client) -> None:
    response = send(
        desk,
        mass="742", mass_unit="g", carrier="Havnepost", carrier_number="GV 17", outer_damage="one corner",
        count_1="0", count_4="1", count_8="1", mat_words="clamp rusted", r0_winding_hand="right",
        r0_serial="5801", r0_mass="338 g", r0_mass_line="on", r0_line="nylon", r0_line_diameter="0,40",
        r0_line_diameter_unit="mm", r0_line_wish="keep", r0_complaint="catches at the right end",
        r0_water="salt", r0_last_opened="never", r0_up_to="1,200 kr", r0_old_parts_back="yes",
        r0_needed_by="2030-06-12", telephone="900 11 222",
    )  # fmt: skip
    assert response.status_code == 302
    block, here = arrival(1), visit(1)
    parcel = here.parcel
    assert (parcel.mass_kg, parcel.carrier, parcel.carrier_number) == (0.742, "Havnepost", "GV 17")
    assert (parcel.outer_damage, parcel.opened_by.shown) == ("one corner", "Torbal Kvie")
    lines = [(c.what, c.count, c.mass_kg, c.words) for c in block.part.contents.all()]
    assert lines == [
        ("reel", 1, 0.338, "with its line"),
        ("line", 1, None, "nylon, 0.4 mm"),
        ("rod clamp and nuts", 1, None, ""),
    ]
    told = block.part
    assert (told.complaint, told.water, told.last_opened) == ("catches at the right end", "salt", "never")
    assert (told.up_to_minor, told.old_parts_back, told.line_wish) == (120_000, True, "keep")
    assert (block.entry.words, here.needed_by.isoformat()) == ("clamp rusted", "2030-06-12")
    assert (here.reel.winding_hand, here.reel.customer.telephone) == ("right", "900 11 222")


@pytest.mark.parametrize(
    ("field", "typed"),
    [
        ("who", ""),
        ("who", "x" * 300),
        ("mass", "742"),
        ("mass", "742 mm"),
        ("mass", "-3 g"),
        ("r0_described", ""),
        ("r0_mass", "a lot"),
        ("r0_line_diameter", "18 lb"),
        ("r0_line_diameter", "0 mm"),
        ("r0_mass", "0 g"),
        ("r0_line", "spaghetti"),
        ("r0_sheet", "no-such-sheet"),
        ("r0_up_to", "twelve hundred"),
        ("r0_needed_by", "soon"),
        ("r0_under_water_at", "yesterday"),
        ("r0_water", "beer"),
        ("count_1", "-1"),
        ("count_1", "many"),
        ("count_0", "0"),
        ("customer", "999999"),
        ("customer", "9" * 40),
        ("r0_which", "reel-77"),
        ("email", "x" * 400),
        ("came_by", "swimming"),
    ],
)
def test_what_cannot_be_read_is_answered_beside_its_field_and_kept(
    desk: Client, field: str, typed: str
) -> None:
    response = send(desk, **{"r0_mass_line": "on", "mat_words": "Kept <b>so</b>", field: typed})
    page = response.content.decode()
    assert refused(response, field), response.context["form"].errors
    assert f'id="id_{field}_error"' in page
    assert "Kept &lt;b&gt;so&lt;/b&gt;" in page
    assert visit(1) is None


def test_a_reel_out_of_the_water_is_not_to_be_turned_and_everybody_is_told_at_once(desk: Client) -> None:
    out = timezone.localtime(timezone.now() - timedelta(hours=1))
    response = send(
        desk, came_by="walk-in", r0_under_water="yes", r0_under_water_at=out.strftime("%Y-%m-%dT%H:%M")
    )
    page = desk.get(response.headers["Location"]).content.decode()
    assert "Do not turn the handle" in page
    assert on_the_bench()[0].reels[0].must_not_be_turned


def test_several_reels_are_several_numbers_in_one_envelope(desk: Client) -> None:
    response = send(
        desk,
        count_0="3",
        count_9="1",
        r1_described="Tarvak 52",
        r2_described="Pellmar 70",
        mat_words="a cover",
    )
    page = desk.get(response.headers["Location"]).content.decode()
    assert "Numbers 1, 2 and 3 are written, in envelope 1." in page
    assert len({visit(tag).parcel_id for tag in (1, 2, 3)}) == 1
    assert [c.what for c in arrival(1).part.contents.all()] == ["reel", "cover"]
    assert [c.what for c in arrival(2).part.contents.all()] == ["reel"]
    assert "its first reel" in arrival(3).entry.words


def test_who_waits_is_not_checked_in_in_full(desk: Client) -> None:
    assert send(desk, came_by="walk-in", while_you_wait="on", r0_complaint="wind knots").status_code == 302
    row = on_the_bench()[0].reels[0]
    assert row.while_you_wait
    assert row.next.act != "reading"


def test_a_step_without_scripts_keeps_everything_and_writes_nothing(desk: Client) -> None:
    response = send(desk, step="look", r0_complaint="slips", mass="742 potatoes", r0_water="salt")
    page = response.content.decode()
    assert response.status_code == 200
    assert "742 potatoes" in page
    assert "slips</textarea>" in page
    assert 'id="id_mass_error"' not in page
    assert visit(1) is None


def test_one_more_reel_is_laid_out_without_scripts(desk: Client) -> None:
    response = send(desk, step="one more", r0_serial="5801")
    page = response.content.decode()
    assert 'name="r1_described"' in page
    assert 'value="5801"' in page
    assert response.context["form"]["count_0"].value() == 2


def test_no_parcel_holds_more_reels_than_can_be_laid_out(desk: Client) -> None:
    response = send(desk, step="one more", count_0="24")
    assert len(response.context["form"].rows) == 24
    assert len(send(desk, step="look", count_0="1000000000000000000000").context["form"].rows) == 1


def test_a_photo_is_kept_while_another_field_is_put_right(desk: Client) -> None:
    first = send(desk, r0_photos=photo(), r0_mass="a lot")
    assert first.status_code == 422
    kept = first.context["form"].around.photos[0].numbers
    assert "Kept already: slate.jpg" in first.content.decode()
    assert send(desk, r0_photos_kept=kept).status_code == 302
    assert [a.attachment.original_name for a in arrival(1).attached] == ["slate.jpg"]


def test_script_in_a_name_stays_a_name(desk: Client) -> None:
    response = send(desk, who="<script>alert(1)</script>", r0_described='"><img src=x>')
    page = desk.get(response.headers["Location"]).content.decode()
    assert "<script>alert(1)" not in page
    assert "<img src=x>" not in page
    assert "&lt;script&gt;alert(1)" in page


def test_the_page_has_a_place_for_each_reel_that_the_address_says(desk: Client) -> None:
    assert len(desk.get("/arrival/?reels=3").context["form"].rows) == 3
    for strange in ("0", "-1", "x", "999", "²"):
        assert len(desk.get("/arrival/", {"reels": strange}).context["form"].rows) == 1


def test_an_envelope_that_is_not_ours_is_not_here(desk: Client) -> None:
    assert desk.get("/arrival/77/").status_code == 404


def test_what_the_act_refuses_is_said_and_kept(desk: Client) -> None:
    send(desk)
    customer = str(visit(1).reel.customer_id)
    response = send(desk, customer=customer, r0_twin_mark="")
    assert refused(response, "r0_twin_mark")
    assert send(desk, customer=customer, r0_twin_mark="red dot").status_code == 302
    again: Any = send(desk, customer=customer, r0_twin_mark="Red dot")
    assert again.status_code == 422
    assert "visible difference" in again.content.decode()
    assert visit(3) is None
