"""A quote is put together, asked, shown; an extra is asked besides with the old answer kept.

Sums: the trade handbook, chapter 9, scenario 1: 520 + 95 + 170 + 190 + 129 = 1,104; ceiling 1,269.60; an
idler cog at 65 makes it 1,169.
"""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.predictions import prediction_of
from spoolwright.shop.records.quote import Quote
from tests.pages import pier_reel
from tests.pages.sent import as_shown, fields
from tests.shop import walk

pytestmark = pytest.mark.django_db
HTMX = {"HX-Request": "true"}


def address(visit: Any) -> str:
    return f"/visits/{visit.tag}/quote/"


def text(html: str) -> str:
    """The page's own words, tags and hard spaces taken out."""
    bare = re.sub(r"<[^>]+>", " ", html).replace("\u00a0", " ").replace("&nbsp;", " ")
    return " ".join(bare.split())


def test_the_page_proposes_the_sums_of_the_story(desk_client: Client, visit: Any) -> None:
    said = text(desk_client.get(address(visit)).content.decode())
    for sum_ in (
        "520.00 kr",
        "95.00 kr",
        "170.00 kr",
        "190.00 kr",
        "129.00 kr",
        "1,104.00 kr",
        "1,269.60 kr",
    ):
        assert sum_ in said
    assert "an hour; 480.00 kr is needed" in said, "what the job earns, for the shop"
    assert "no source" in said, "beside what the trade asks"
    assert "Springs jump" in said, "cautions for the bench"


def test_asked_it_stands_in_the_diary_with_promises_and_the_reel_waits(
    desk_client: Client, visit: Any
) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    improve = quote.options.all()[1]
    assert [line.gross_minor for line in improve.lines.all()] == [520_00, 170_00, 190_00, 95_00, 129_00]
    assert improve.total_minor == improve.whole_minor == 1104_00
    promised = {promise.reading_kind: promise for promise in improve.promises.all()}
    assert promised["start_up_ratio"].high_si == pytest.approx(1.14)
    assert promised["start_up_ratio"].low_si is None
    assert promised["start_up_ratio"].conditions == {"line": "on", "radius": 0.0235, "star_turns": 2.5}
    assert promised["pull_full"].conditions == {"line": "on", "radius": 0.0235}
    assert promised["pull_full"].low_si < promised["pull_full"].middle_si < promised["pull_full"].high_si
    assert prediction_of(improve).values["pull_full_spool"].middle == promised["pull_full"].middle_si
    assert by_number.visit(visit.pk).place == "asked shelf"
    assert quote.valid_until is not None


def test_a_work_ticked_out_and_a_price_typed_change_the_sums_without_a_script(
    desk_client: Client, visit: Any
) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to")
    sent["works_1"] = [work for work in sent["works_1"] if work != "new-pawl"]
    sent |= {"price_carbon-drag-set_0": ["180 kr"], "do": ["again"]}
    response = desk_client.post(address(visit), sent)
    said = text(response.content.decode())
    assert response.status_code == 200
    assert "999.00 kr" in said, "1,104 less the pawl's 95 and 10 off the carbon set"
    assert Quote.objects.count() == 0
    again = fields(response.content.decode(), "moved_to")
    assert again["price_carbon-drag-set_0"] == ["180 kr"]
    assert "new-pawl" not in again["works_1"]


def test_htmx_gets_the_outcomes_alone(desk_client: Client, visit: Any) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to")
    page = desk_client.post(address(visit), sent, headers=HTMX).content.decode()
    assert page.lstrip().startswith('<div id="outcomes"')
    assert "1,104.00" in page


def test_the_prediction_follows_the_works_and_an_untouched_promise_with_it(
    desk_client: Client, visit: Any
) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to")
    assert sent["promise_1-start_up_ratio_high"] == ["1.14"]
    sent["works_1"] = [work for work in sent["works_1"] if work != "carbon-drag-set"] + ["dress-drag"]
    again = fields(desk_client.post(address(visit), sent).content.decode(), "moved_to")
    assert float(again["promise_1-start_up_ratio_high"][0]) > 1.3
    assert "promise_1-pull_full" not in again, "nothing moves the greatest pull any more"


def test_a_promise_that_somebody_typed_stays_as_it_was_typed(desk_client: Client, visit: Any) -> None:
    typed = {"promise_1-start_up_ratio_high": ["1.10"], "promise_1-judder": []}
    quote = pier_reel.quoted(desk_client, visit, **typed)
    promises = {p.reading_kind: p for p in quote.options.all()[1].promises.all()}
    assert promises["start_up_ratio"].high_si == pytest.approx(1.10)
    assert "judder" not in promises


def test_another_reading_can_be_promised_from_experience(desk_client: Client, visit: Any) -> None:
    own = {"promise_1-own_0_kind": ["click_pull"], "promise_1-own_0_low": ["150 g"]}
    quote = pier_reel.quoted(desk_client, visit, **own)
    promise = quote.options.all()[1].promises.get(kind="click_pull")
    assert promise.low_si == pytest.approx(0.15 * walk.G)
    assert "not predicted" in promise.rests_on


def test_a_line_besides_goes_into_the_options_it_is_ticked_for(desk_client: Client, visit: Any) -> None:
    line = {
        "line_0_what": ["Nylon 0.40, 200 m"],
        "line_0_sum": ["180 kr"],
        "line_0_kind": ["part"],
        "line_0_in": ["2"],
    }
    sent = as_shown(desk_client, address(visit), "moved_to") | line | {"do": ["again"]}
    page = desk_client.post(address(visit), sent).content.decode()
    assert "line_1_what" in page, "an empty line for the next one"
    shown = fields(page, "moved_to") | {"do": ["ask"]}
    assert desk_client.post(address(visit), shown).status_code == 302
    first, _, most = Quote.objects.get().options.all()
    assert "Nylon 0.40, 200 m" in [line.what for line in most.lines.all()]
    assert first.total_minor == 744_00


def test_a_sum_that_nobody_has_looked_at_is_not_asked(desk_client: Client, visit: Any) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to")
    sent |= {"price_new-pawl_0": ["120 kr"], "do": ["ask"]}
    response = desk_client.post(address(visit), sent)
    assert response.status_code == 422
    assert "worked out again" in response.content.decode()
    assert Quote.objects.count() == 0
    looked = fields(response.content.decode(), "moved_to") | {"do": ["ask"]}
    assert desk_client.post(address(visit), looked).status_code == 302
    assert Quote.objects.get().options.all()[1].total_minor == 1129_00


def test_what_somebody_else_wrote_meanwhile_is_shown_before_anything_is_asked(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to") | {"do": ["ask"], "words": ["Dear Ragna"]}
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split <here>")
    response = desk_client.post(address(visit), sent)
    page = response.content.decode()
    assert response.status_code == 422
    assert "split &lt;here&gt;" in page
    assert "Dear Ragna" in page
    assert Quote.objects.count() == 0


BAD = [
    ("price_new-pawl_0", "a lot", "is not an amount"),
    ("minutes_new-pawl", "-3", "greater than or equal to 0"),
    ("minutes_new-pawl", "soon", "whole number"),
    ("radius", "23.5 kg", "kg"),
    ("wanted_pull", "3 mm", "mm"),
    ("star_turns", "half", "number"),
    ("star_turns", "1e9", "0 to 100 turns"),
    ("star_turns", "nan", "number"),
    ("radius", "-3 mm", "1 mm to 500 mm"),
    ("wanted_pull", "-2 kg", "above nothing"),
    ("line_strength", "0 kg", "above nothing"),
    ("promise_1-start_up_ratio_high", "much", "much"),
    ("promise_1-pull_full_low", "9 kg", "The least is above the most"),
    ("line_0_sum", "40 kr", "what is it for"),
    ("line_0_what", "Line", "no sum"),
    ("valid_until", "soon", "This is not a day"),
    ("moved_to", "attic", "not one of the available choices"),
    ("deposit", "all of it", "is not an amount"),
    ("works_1", "make-coffee", "not one of the available choices"),
]


def test_what_cannot_be_read_is_said_beside_its_field_and_nothing_is_asked(
    desk_client: Client, visit: Any
) -> None:
    shown = as_shown(desk_client, address(visit), "moved_to") | {"do": ["ask"]}
    for field, typed, said in BAD:
        sent = {name: value for name, value in shown.items() if name != f"{field}_unit"} | {field: [typed]}
        response = desk_client.post(address(visit), sent)
        page = response.content.decode()
        assert (field, response.status_code) == (field, 422)
        assert said in page, field
        assert "Nothing was written" in page
    assert Quote.objects.count() == 0


def test_without_any_option_there_is_no_quote(desk_client: Client, visit: Any) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to") | {"do": ["ask"]}
    for number in range(3):
        sent.pop(f"offer_{number}")
    response = desk_client.post(address(visit), sent)
    assert response.status_code == 422
    assert "at least one option" in response.content.decode()


def test_only_the_options_that_are_offered_are_asked(desk_client: Client, visit: Any) -> None:
    quote = pier_reel.quoted(desk_client, visit, offer_0=[], offer_2=[])
    assert [option.key for option in quote.options.all()] == ["improve"]


def test_an_extra_is_a_question_of_its_own_and_the_old_answer_is_kept(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    first = pier_reel.quoted(desk_client, visit)
    yes = pier_reel.answered(hand, first)
    walk.write_finding(
        hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split, seen at the strip-down"
    )
    said = text(desk_client.get(address(visit)).content.decode())
    assert "A question besides" in said
    assert "yes, up to 1,200" in said
    assert "1,169.00 kr" in said
    assert "within the cap of 1,200.00 kr" in said
    extra = pier_reel.quoted(desk_client, visit)
    option = extra.options.get()
    assert [(line.what, line.gross_minor) for line in option.lines.all()] == [("Idler cog", 65_00)]
    assert (option.total_minor, option.whole_minor) == (65_00, 1169_00)
    assert extra.extends_id == yes.pk
    assert agreed(visit.pk).total_minor == 1104_00
    assert diary(visit.pk).next.act == "work", "inside the cap the work goes on"


def test_with_nothing_new_there_is_nothing_to_ask(hand: Any, desk_client: Client, visit: Any) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit))
    sent = as_shown(desk_client, address(visit), "moved_to")
    assert "offer_0" not in sent
    assert "Nothing was found since the last question" in text(
        desk_client.get(address(visit)).content.decode()
    )
    response = desk_client.post(address(visit), sent | {"do": ["ask"]})
    assert response.status_code == 422


def test_a_question_that_waits_already_is_said(desk_client: Client, visit: Any) -> None:
    pier_reel.quoted(desk_client, visit)
    assert "has no answer yet" in desk_client.get(address(visit)).content.decode()


def test_a_reel_without_a_sheet_is_priced_and_not_predicted(hand: Any, desk_client: Client) -> None:
    visit = pier_reel.on_the_mat(hand, sheet=False)
    walk.write_finding(
        hand=hand, visit=visit, part="roller clutch", fault="F12", evidence="slips in the cold"
    )
    page = desk_client.get(f"{address(visit)}?kind=fixed spool").content.decode()
    assert "No sheet describes this reel" in page
    sent = fields(page, "moved_to")
    assert sent["kind"] == ["fixed spool"]
    assert not [name for name in sent if name.endswith("_was")]
    own = {"promise_0-own_0_kind": ["anti_reverse_slips"], "promise_0-own_0_high": ["0"], "do": ["ask"]}
    assert desk_client.post(address(visit), sent | own).status_code == 302
    option = Quote.objects.get().options.first()
    assert option.promises.get().high_si == 0.0
    assert prediction_of(option) is None


def test_a_reel_that_has_gone_home_is_not_asked_about(hand: Any, desk_client: Client, visit: Any) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to") | {"do": ["ask"]}
    walk.gone(hand, visit)
    fresh = sent | {"seen": [str(diary(visit.pk).last_seq)]}
    response = desk_client.post(address(visit), fresh)
    assert response.status_code == 422
    assert "has gone home" in response.content.decode()


def test_the_wanted_pull_names_its_turn_of_the_star(desk_client: Client, visit: Any) -> None:
    sent = as_shown(desk_client, address(visit), "moved_to")
    sent |= {"wanted_pull": ["2.7"], "wanted_pull_unit": ["kg"]}
    said = text(desk_client.post(address(visit), sent, headers=HTMX).content.decode())
    assert re.search(r"2\.70 kg at a full spool: star about \d\.\d of 5 turns from free", said)


def test_no_diary_no_quote(desk_client: Client) -> None:
    assert desk_client.get("/visits/999/quote/").status_code == 404


def test_the_customer_sees_plain_words_and_no_figure_of_the_shops(desk_client: Client, visit: Any) -> None:
    quote = pier_reel.quoted(desk_client, visit, words=["We can begin on Monday."])
    page = desk_client.get(f"{address(visit)}{quote.pk}/").content.decode()
    said = text(page)
    assert "Dear Ragna Solbu" in said
    assert "We can begin on Monday." in said
    for sum_ in ("744.00 kr", "1,104.00 kr", "1,269.60 kr"):
        assert sum_ in said
    assert "an hour" not in said
    assert "is needed" not in said
    assert "Springs jump" not in said
    assert 'class="finding"' in page, "the finding is ringed on the drawing"
    assert page.count("data-chart=") >= 3


def test_the_customer_may_read_it_in_other_units(desk_client: Client, visit: Any) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    shown = f"{address(visit)}{quote.pk}/"
    assert "lb" in text(desk_client.get(f"{shown}?units=imperial").content.decode())
    assert " lb" not in text(desk_client.get(f"{shown}?units=furlongs").content.decode())


def test_a_quote_of_another_reel_or_another_entry_is_not_here(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    other = walk.arrived(hand, name="Jonna Fure", reel="Ostrell S71")
    assert desk_client.get(f"{address(other)}{quote.pk}/").status_code == 404
    assert desk_client.get(f"{address(visit)}{visit.entries.first().pk}/").status_code == 404
    assert desk_client.get(f"{address(visit)}999/").status_code == 404


def test_a_struck_quote_says_that_it_is_not_to_be_answered(
    hand: Any, desk_client: Client, visit: Any
) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    walk.strike_entry(hand=hand, entry=quote.entry, reason="the pawl was forgotten")
    page = desk_client.get(f"{address(visit)}{quote.pk}/").content.decode()
    assert "the pawl was forgotten" in page


def test_a_newer_sheet_does_not_change_what_was_promised(hand: Any, desk_client: Client, visit: Any) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    before = desk_client.get(f"{address(visit)}{quote.pk}/").content.decode()
    other = walk.add_sheet_version(hand=hand, toml=walk.reel_sheet.shipped()["tarvak-52"])
    reel = by_number.visit(visit.pk).reel
    describe_reel(hand=hand, reel=reel, sheet_version=other, version=reel.version)
    after = desk_client.get(f"{address(visit)}{quote.pk}/").content.decode()
    assert text(before).count("at most 1.14") == text(after).count("at most 1.14") > 0
