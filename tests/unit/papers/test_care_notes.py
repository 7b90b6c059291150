"""What an owner is told until the reel comes back."""

from spoolwright.papers.care_notes import AFTER_FRESH, AFTER_SALT, MULTIPLIER, WHEREVER, care_notes


def test_the_water_and_the_kind_of_reel_decide() -> None:
    assert care_notes("round multiplier", "salt") == (*AFTER_SALT, *MULTIPLIER, *WHEREVER)
    assert care_notes("fixed spool", "fresh") == (*AFTER_FRESH, *WHEREVER)
    assert any("check" in words for words in care_notes("fly", "fresh"))


def test_what_is_not_known_is_taken_as_the_harder_case() -> None:
    assert care_notes("", "") == (*AFTER_SALT, *WHEREVER)


def test_nobody_is_told_to_use_a_jet() -> None:
    assert "never a jet" in " ".join(care_notes("", "salt"))
