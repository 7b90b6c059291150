"""One coefficient as it is read: latest proof first, what each says alone, what is set aside."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import Http404
from django.test import RequestFactory

from spoolwright.pages.book.forms import AsideForm
from spoolwright.pages.book.leaf import Leaf
from spoolwright.shop.acts.set_aside import set_aside
from tests.people import bench_hand
from tests.shop.proved_reel import CARBON


def leaf(key: str = CARBON, form: AsideForm | None = None) -> Leaf:
    request = RequestFactory().get(f"/book/{key}/")
    request.user = bench_hand()
    return Leaf(request, key, form)


def test_the_proof_says_what_it_says_alone_and_where_it_stands(proof: Any) -> None:
    (line,) = leaf().proofs
    assert line.entry == proof
    assert line.diary.endswith(f"#entry-{proof.pk}")
    assert 0.05 < float(line.says) < 0.5
    assert line.read.startswith("pull with the drag hard on 6.9")


def test_minutes_are_read_from_the_work(proof: Any) -> None:
    told = leaf("minutes-carbon-drag-set-round-multiplier")
    assert [line.read for line in told.proofs] == ["the works of that day took 48 min"]
    assert told.now_middle.endswith("min")


def test_the_next_proof_scatters_more_than_what_is_believed(proof: Any) -> None:
    told = leaf()
    believed, coming = (
        [float(end) for end in span.split(" to ")] for span in (told.now_span, told.next_span)
    )
    assert coming[0] < believed[0] < believed[1] < coming[1]
    assert leaf("minutes-carbon-drag-set-round-multiplier").next_span == ""


def test_the_picture_has_a_step_for_each_proof(proof: Any) -> None:
    assert [row[0] for row in leaf().chart.rows][0] == "the sheet"
    assert len(leaf().chart.rows) == 2


def test_what_was_typed_stands_in_the_form_of_its_proof(proof: Any) -> None:
    sent = AsideForm({"entry": proof.pk, "reason": ""}, proof.pk)
    assert [line.form for line in leaf(form=sent).proofs] == [sent]


def test_set_aside_it_stands_below(proof: Any) -> None:
    set_aside(hand=bench_hand(), entry=proof, reason="wet felt", coefficient=CARBON)
    told = leaf()
    assert told.proofs == []
    (line,) = told.aside
    assert (line.row.reason, line.proof.entry) == ("wet felt", proof)
    assert line.back.endswith(f"/back/{line.row.pk}/")


def test_another_name_is_not_found(proof: Any) -> None:
    with pytest.raises(Http404):
        leaf("no-such")
