"""What a prediction rests on, in words."""

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.grounds import Grounds
from spoolwright.judgement.reel_state import after, as_built, as_found
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
PULL = Taken("pull_run", Measured(25.497, 0.2, "force"), {"radius": 0.0235, "star_turns": 2.5})


def grounds(
    works: tuple[str, ...] = (), system: str = "metric", used: tuple[Taken, ...] = (PULL,)
) -> Grounds:
    state = after(as_found(SHEET), SHEET, [all_works()[name] for name in works])
    return Grounds(SHEET, state, used, works, system)


def test_a_reading_is_named_with_its_conditions() -> None:
    assert (
        "your running pull reading of 2.600 kg ± 0.041 kg at 23.5 mm, star 2.5 turns from free"
        in grounds().of_drag()
    )


def test_a_prior_is_called_a_prior() -> None:
    assert any("judgement prior" in why for why in grounds().of_drag())
    assert all("judgement prior" in why for why in grounds().of_range("judder"))


def test_a_work_that_renews_a_thing_silences_its_old_reading() -> None:
    ratio = Taken("start_up_ratio", Measured(1.5, 0.03, "ratio"))
    assert any("your start-up ratio" in why for why in grounds(used=(ratio,)).of_range("start_up_ratio"))
    renewed = grounds(("carbon-drag-set",), used=(ratio,)).of_range("start_up_ratio")
    assert not any("your start-up ratio" in why for why in renewed)
    assert any("work: carbon drag set" in why for why in renewed)


def test_pressure_above_the_published_figure_is_told_once_a_material() -> None:
    carbon = Grounds(SHEET, after(as_built(SHEET), SHEET, [all_works()["carbon-drag-set"]]), (), ())
    warnings = carbon.pressure_warnings()
    assert len(warnings) == 1
    assert "2.10 MPa" in warnings[0]
    assert Grounds(SHEET.model_copy(update={"drag": None}), as_built(SHEET), (), ()).pressure_warnings() == ()


def test_words_follow_the_readers_units() -> None:
    assert any("0.925 in" in why for why in grounds(system="imperial").of_drag())
    assert any("0.0157 in" in why for why in grounds(system="imperial").of_line(0.4e-3, measured=True))
