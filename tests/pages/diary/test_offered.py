"""Words that are offered and never forced."""

from __future__ import annotations

from spoolwright.pages.diary.ask.offered import WordsField, WordsInput


def test_offered_words_stand_behind_the_field_once_each() -> None:
    drawn = WordsInput(["pawl", "worm", "pawl"]).render("part", "pa", {"id": "id_part"})
    assert drawn.count('<option value="pawl">') == 1
    assert 'list="id_part-offered"' in drawn
    assert 'id="id_part-offered"' in drawn
    assert 'value="pa"' in drawn


def test_offered_words_are_only_words() -> None:
    drawn = WordsInput(["<script>x()</script>"]).render("part", "", {"id": "id_part"})
    assert "<script>" not in drawn


def test_without_an_offer_it_is_a_plain_field() -> None:
    assert "datalist" not in WordsInput().render("part", "", {"id": "id_part"})


def test_any_other_word_is_taken() -> None:
    assert WordsField(["pawl"]).clean("a spring of my own") == "a spring of my own"
