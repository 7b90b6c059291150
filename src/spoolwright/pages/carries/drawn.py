"""What the page shows for the answers of its form; each part is worked out when the template asks for it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from django.utils.safestring import SafeString, mark_safe

from spoolwright import quantities
from spoolwright.judgement.carried import carried, in_words
from spoolwright.judgement.load_ladder import Ladder
from spoolwright.judgement.rung import Rung
from spoolwright.judgement.wound_line import WoundLine
from spoolwright.pages.carries import kept, pull_charts
from spoolwright.pages.carries.asked import CarriesForm
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.words import shown
from spoolwright.papers import ladder_drawing
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Span
from spoolwright.papers.figures import shown as figure
from spoolwright.papers.ladder_drawing import Setting


@dataclass(frozen=True)
class Step:
    """One rung in words: the pull, what gives, and what says so."""

    key: str
    name: str
    pull: str
    what_gives: str
    over: str
    lasts: str
    source: str
    mark: str


@dataclass(frozen=True)
class After:
    """One state in short: what the drag gives and which part is the weakest then."""

    words: str
    says: str
    is_shown: bool


class Drawn:
    """One subject with the answers of its form."""

    def __init__(self, subject: Subject, form: CarriesForm) -> None:
        self.subject, self.form, self.system = subject, form, subject.system

    @cached_property
    def state(self) -> State:
        return self.subject.state(self.form.value("state") if "state" in self.form.fields else "")

    @property
    def fill(self) -> float:
        return float(self.form.value("fill"))

    # --- the ladder -------------------------------------------------------------------------------------

    @cached_property
    def ladder(self) -> Ladder:
        return kept.ladder(self.subject, self.state, line=self.form.value("line"), fill=self.fill)

    @property
    def why_not(self) -> str:
        return self.ladder.why_not

    @property
    def narrow(self) -> SafeString:
        return self._drawing("narrow")

    @property
    def desk(self) -> SafeString:
        return self._drawing("desk")

    def _drawing(self, arrangement: str) -> SafeString:
        disc = kept.disc(self.subject, self.state)
        # The drawing is made by papers, which escapes every word in it.
        return mark_safe(
            ladder_drawing.draw(
                self.ladder, friction=disc, arrangement=arrangement, setting=self.set_at, system=self.system
            )
        )

    @cached_property
    def set_at(self) -> Setting | None:
        """Where the slider has the drag; hard on is the drag's own rung."""
        turns = self.form.turns
        if turns is None or turns >= self.subject.setting.whole:
            return None
        pull = pull_charts.at_turns(self.subject, self.state, turns, self.ladder.radius)
        return Setting(pull, self.subject.setting.stands(turns)) if pull else None

    @property
    def set_words(self) -> str:
        if self.set_at is None:
            return ""
        where = shown.quantity(self.ladder.radius, "length", self.system)
        pull = shown.unbroken(figure(self.set_at.pull, self.system))
        return f"{self.set_at.words[:1].upper()}{self.set_at.words[1:]}, line leaving at {where}: {pull}."

    @cached_property
    def steps(self) -> list[Step]:
        """Every rung from the weakest up, with its source and its mark."""
        return [self._step(rung) for rung in self.ladder.rungs]

    def _step(self, rung: Rung) -> Step:
        limit = rung.limit
        against = {"reel": "the drag’s greatest", "line": "the drag as it is set", "drag": ""}[rung.borne]
        over = f"{rung.over.middle:.2f} times {against}, {rung.over.low:.2f} to {rung.over.high:.2f}"
        lasts = quantities.show(rung.lasts.middle, "force", self.system) if rung.lasts else ""
        return Step(
            key=rung.part.replace(" ", "-"),
            name=rung.name[:1].upper() + rung.name[1:],
            pull=shown.unbroken(figure(Span(limit.middle, limit.low, limit.high, "force"), self.system)),
            what_gives=rung.what_gives,
            over=over if against else "",
            lasts=shown.unbroken(lasts),
            source=rung.source,
            mark=rung.mark,
        )

    @cached_property
    def afters(self) -> list[After]:
        """Each state in short, at a full spool, with the line that was asked."""
        if len(self.subject.states) < 2 or self.why_not:
            return []
        line = self.form.value("line")
        return [self._after(state, line) for state in self.subject.states]

    def _after(self, state: State, line: str) -> After:
        found = carried(kept.ladder(self.subject, state, line=line))
        says = in_words(found, self.system) if found else "No ladder can be worked out for this."
        return After(state.words, says, state == self.state)

    # --- pull, and the line that is wound on --------------------------------------------------------------

    @cached_property
    def emptying(self) -> Chart | None:
        return pull_charts.emptying(self.subject, self.fill)

    @cached_property
    def turning(self) -> Chart | None:
        return pull_charts.turning(self.subject, self.form.turns, self.ladder.radius)

    @cached_property
    def wound(self) -> WoundLine:
        line, tension = self.form.value("line"), float(self.form.value("tension"))
        return kept.wound(self.subject, line=line, tension=tension, fill=self.fill)
