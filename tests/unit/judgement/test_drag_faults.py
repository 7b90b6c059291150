"""The causes and their priors."""

import pytest

from spoolwright.judgement import drag_faults


def test_every_cause_has_its_chance_its_mark_and_what_would_show_it() -> None:
    causes = drag_faults.causes()
    assert tuple(causes) == drag_faults.KEYS
    assert sum(cause.chance for cause in causes.values()) == pytest.approx(1.0)
    for key, cause in causes.items():
        assert cause.title
        assert cause.mark == "judgement prior"
        assert bool(cause.next) == (key != drag_faults.SOUND)
        for low, high in (cause.friction, cause.start_ratio, cause.lost_thickness, cause.spring_force):
            assert 0 <= low <= high


def test_only_what_a_cause_changes_is_not_as_it_was() -> None:
    causes = drag_faults.causes()
    assert causes["sound"].friction == (1.0, 1.0)
    assert causes["worn"].lost_thickness[0] > 0
    assert causes["worn"].friction == (1.0, 1.0)
    assert causes["glazed"].friction[1] < 1 < causes["glazed"].start_ratio[0]
    assert causes["oiled"].start_ratio[1] <= 1
    assert causes["weak"].spring_force[1] < 1
    assert causes["misstacked"].pairs == (1, 2)
    assert drag_faults.setup().named < drag_faults.setup().among < 1
