"""Names on leaders stay apart, whatever they are called and wherever they start."""

from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.papers.section import leaders
from spoolwright.papers.section.leaders import APART, Name, Placed, Zone

ZONE = Zone(100.0, 1, 0.0, 400.0, 12.0)


def names(*columns: float, words: str = "friction disc") -> list[Name]:
    return [Name(f"part-{k}", (words,), (x, 90.0), x) for k, x in enumerate(columns)]


def faults(placed: list[Placed], zone: Zone) -> list[str]:
    found = []
    for one in placed:
        left, top, right, bottom = leaders.text_box(one, zone)
        if left < zone.left or right > zone.right:
            found.append(f"{one.name.key} leaves the sheet")
        for other in placed:
            if other is one:
                continue
            a, over, b, under = leaders.text_box(other, zone)
            if left < b and a < right and top < under and over < bottom:
                found.append(f"{one.name.key} covers {other.name.key}")
            x, tip = other.name.column, zone.tip(other)
            low, high = sorted((zone.edge, tip))
            if left < x < right and low < bottom - 1 and high > top + 1:
                found.append(f"the leader of {other.name.key} runs through {one.name.key}")
    return found


@settings(max_examples=150, deadline=None)
@given(
    st.lists(st.floats(5, 395), min_size=1, max_size=12),
    st.sampled_from([1, -1]),
    st.sampled_from(["line", "spool bearing", "friction disc under the gear"]),
)
def test_what_is_placed_is_readable(columns: list[float], direction: int, words: str) -> None:
    spread = sorted(columns)
    for k in range(1, len(spread)):
        spread[k] = max(spread[k], spread[k - 1] + APART)
    zone = Zone(100.0, direction, 0.0, 400.0, 12.0)
    placed = leaders.place(names(*spread, words=words), zone)
    if placed is not None:
        assert faults(placed, zone) == []
        assert len(placed) == len(columns)


def test_names_far_apart_share_one_row() -> None:
    placed = leaders.place(names(60, 200, 340, words="cogs"), ZONE)
    assert placed is not None
    assert {it.row for it in placed} == {0}


def test_names_close_together_are_staggered() -> None:
    placed = leaders.place(names(180, 190, 200, 210), ZONE)
    assert placed is not None
    assert faults(placed, ZONE) == []
    assert len({it.row for it in placed}) > 1


def test_names_that_would_fall_off_both_ends_are_fanned_out() -> None:
    columns = [float(x) for x in range(8, 396, 30)]
    placed = leaders.place(names(*columns), ZONE)
    assert placed is not None
    assert faults(placed, ZONE) == []


def test_a_name_may_stand_over_its_leader_before_leaders_slant() -> None:
    """Three names of half the sheet's gap each side: none fits beside its leader without a slant."""
    columns, zone = (40.0, 95.0, 150.0), Zone(100.0, 1, 0.0, 190.0, 12.0)
    placed = leaders.place(names(*columns, words="friction"), zone, fan=False)
    assert placed is not None
    assert faults(placed, zone) == []
    assert [it.name.column for it in placed] == list(columns)


def test_without_fanning_what_cannot_stand_is_not_placed() -> None:
    columns = [float(x) for x in range(8, 396, 30)]
    assert leaders.place(names(*columns), ZONE, fan=False) is None


def test_rows_do_not_depend_on_heights_and_marks_stay_where_they_are() -> None:
    for level in (80.0, 95.0):
        asked = [Name("a", ("line",), (60.0, level), 60.0), Name("b", ("spool",), (90.0, 90.0), 90.0)]
        placed = leaders.place(asked, ZONE)
        assert placed is not None
        assert {it.name.key: it.name.mark[1] for it in placed} == {"a": level, "b": 90.0}


def test_a_name_wider_than_the_sheet_is_not_placed() -> None:
    assert leaders.place(names(200, words="w" * 200), ZONE) is None


def test_no_names_take_no_room_but_a_margin() -> None:
    assert leaders.place([], ZONE) == []
    assert leaders.height([], ZONE) < ZONE.row_height


def test_lines_of_one_name_follow_one_another_downwards_on_both_sides() -> None:
    two = Placed(Name("a", ("one", "two"), (0, 0), 100.0), 1, 1)
    for direction in (1, -1):
        lines = Zone(100.0, direction, 0.0, 400.0, 12.0).baselines(two)
        assert lines[0] < lines[1]
