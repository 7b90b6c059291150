"""What a refusal says, and what a question asks."""

from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable


def test_a_refusal_says_where_why_and_what_is_accepted() -> None:
    refused = Unreadable("“OL” is not a number", "pull.csv, line 7", "12.5 or 12,5")
    assert str(refused) == "pull.csv, line 7: “OL” is not a number. Accepted: 12.5 or 12,5."


def test_without_a_place_it_begins_a_sentence() -> None:
    assert Unreadable("the file is empty").words == "The file is empty."


def test_a_question_names_every_answer_that_is_needed() -> None:
    asked = NeedsAnswer(
        (Question("rate", "How many?", "100 Hz"), Question("force_unit", "Which unit?", "N, kg"))
    )
    assert asked.missing == ("rate", "force_unit")
    assert "How many? Which unit? Accepted: rate: 100 Hz; force_unit: N, kg." in str(asked)


def test_a_question_is_a_refusal_too() -> None:
    assert issubclass(NeedsAnswer, Unreadable)
    assert issubclass(Unreadable, ValueError)


def test_a_question_keeps_its_mark() -> None:
    assert Unreadable("it is too fast", "", "1 to 600 rad/s; one tick a turn?").words.endswith("a turn?")
