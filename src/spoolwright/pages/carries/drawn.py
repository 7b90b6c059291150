"""What the page shows for the answers of its form; each part is worked out when it is asked for."""

from __future__ import annotations

from functools import cached_property

from spoolwright.judgement import drag_train
from spoolwright.pages.carries.asked import CarriesForm
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.papers import charts
from spoolwright.papers.charts import Along, Chart, Curve, Story

SHARES = (0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)


class Drawn:
    def __init__(self, subject: Subject, form: CarriesForm) -> None:
        self.subject, self.form = subject, form

    @cached_property
    def emptying(self) -> Chart | None:
        curves = [curve for state in self.subject.states if (curve := self.curve(state))]
        if not curves:
            return None
        story = Story("Pull against line left", "As the spool empties the pull grows.")
        along = Along("line_length", "line left on the spool")
        return charts.states(along, Along("force", "pull"), curves, story, system=self.subject.system)

    def curve(self, state: State) -> Curve | None:
        s = self.subject
        values = kept_known.prediction(s.sheet, s.taken, state.works, s.system).values
        torque, capacity = values.get("drag_torque"), values.get("line_capacity")
        if torque is None or capacity is None:
            return None
        radii = [drag_train.radius_at_fill(s.sheet, share) for share in SHARES]
        return Curve(
            state.words,
            [capacity.middle * share for share in SHARES],
            [torque.middle / r for r in radii],
            [torque.low / r for r in radii],
            [torque.high / r for r in radii],
        )
