"""One sheet as its page tells it: each part is worked out when it is asked for, so a piece costs a piece."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property, lru_cache
from typing import Any

from spoolwright import quantities
from spoolwright.judgement import drag_train
from spoolwright.judgement.book_lessons import Lessons
from spoolwright.judgement.drag_train import LIMITS
from spoolwright.judgement.prediction import Predicted, Prediction
from spoolwright.pages import doors
from spoolwright.pages.gathered import pictures
from spoolwright.pages.gathered.kept_readings import FrozenTaken, frozen, thawed
from spoolwright.pages.reel_sheet import expected, known, known_of_spool, pull_charts
from spoolwright.pages.reel_sheet.asked_pull import LineForm, TargetForm
from spoolwright.pages.reel_sheet.expected import Expected
from spoolwright.pages.reel_sheet.known import KnownPart
from spoolwright.pages.reel_sheet.look import Look, LookForm, look_of, settled
from spoolwright.pages.reel_sheet.stack_in_words import StackInWords, stack_in_words
from spoolwright.pages.words import shown
from spoolwright.papers import section_drawing
from spoolwright.papers.charts import Chart
from spoolwright.papers.section_drawing import PartName, Ringed
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_remarks import remarks
from spoolwright.shop.questions import book, by_number, readings, reel_sheets
from spoolwright.shop.questions.blocks import Block, blocks_of

FILLS = (
    ("pull_full_spool", "At a full spool"),
    ("pull_half_spool", "Half of the line left"),
    ("pull_near_empty", "A tenth of the line left"),
)
KEPT_IN_ADDRESS = ("level", "level_unit", "fill", "was", "words", "stack", "visit", "version")


@lru_cache(maxsize=64)
def read(text: str) -> ReelSheet:
    """The sheet in a text that was read once already before it was written down."""
    return reel_sheet.read(text)


@lru_cache(maxsize=96)
def drawn(sheet: ReelSheet, how: tuple[tuple[str, Any], ...]) -> str:
    """The drawing as SVG, kept: the same one is asked for again and again."""
    return section_drawing.draw(sheet, **dict(how))


class Leaf:
    """The page of one version of one sheet, for one reader."""

    def __init__(self, request: Any, version: Any) -> None:
        self.request, self.version = request, version
        self.asked = request.GET
        self.system = shown.system_of(request.user)

    @cached_property
    def sheet(self) -> ReelSheet:
        return read(self.version.toml)

    @property
    def slug(self) -> str:
        return str(self.version.sheet.slug)

    @cached_property
    def is_newest(self) -> bool:
        return self.versions[0].number == self.version.number

    @cached_property
    def versions(self) -> Sequence[Any]:
        return reel_sheets.versions(self.slug)

    @cached_property
    def reels(self) -> list[dict[str, str]]:
        """Ours of this model, each with the way to its passport."""
        return [
            {
                "words": f"{reel.described} of {reel.customer.name}",
                "way": doors.way_to("passport:passport", reel.pk),
            }
            for reel in reel_sheets.reels_of(self.slug)
        ]

    # --- the drawing ------------------------------------------------------------------------------

    @cached_property
    def look_asked(self) -> LookForm:
        data = self.asked if any(name in self.asked for name in LookForm.base_fields) else None
        form = LookForm(data, sheet=self.sheet, system=self.system)
        form.is_valid()
        return form

    @cached_property
    def look(self) -> Look:
        return look_of(self.look_asked)

    @cached_property
    def look_form(self) -> LookForm:
        return settled(self.look_asked, self.look)

    @cached_property
    def address(self) -> str:
        """The way back to this very look, without a part; it ends so that a further word can be put on."""
        kept = self.asked.copy()
        for name in list(kept):
            if name not in KEPT_IN_ADDRESS:
                del kept[name]
        said = kept.urlencode()
        return f"?{said}&" if said else "?"

    @property
    def narrow(self) -> str:
        return self._drawing("narrow")

    @property
    def desk(self) -> str:
        return self._drawing("desk")

    def _drawing(self, arrangement: str) -> str:
        how = {
            "fill": self.look.fill,
            "arrangement": arrangement,
            "findings": self.rings,
            "shown": self.look.shown(self.part_asked),
            "system": self.system,
            "link": f"{self.address}part={{key}}#known",
        }
        return drawn(self.sheet, tuple(how.items()))

    @cached_property
    def part_asked(self) -> str:
        return str(self.asked.get("part", ""))[:60]

    @cached_property
    def known(self) -> KnownPart | None:
        return known.known_part(self.sheet, self.part_asked, self.system) if self.part_asked else None

    @cached_property
    def parts(self) -> tuple[PartName, ...]:
        return section_drawing.parts(self.sheet)

    @cached_property
    def at_this_level(self) -> Expected | None:
        """The pull with the line as it is drawn; a reel without a drag of discs has none."""
        torque = self.prediction.values.get("drag_torque")
        if torque is None:
            return None
        radius = drag_train.radius_at_fill(self.sheet, self.look.fill)
        return expected.at_radius(torque, radius, self.system)

    # --- a visit whose findings are ringed -----------------------------------------------------------

    @cached_property
    def visit(self) -> Any:
        tag = str(self.asked.get("visit", "")).strip()
        return by_number.visit_tagged(int(tag)) if tag.isascii() and tag.isdigit() and len(tag) < 10 else None

    @cached_property
    def visit_fits(self) -> bool:
        """Whether the reel of the visit is described by this sheet, in whatever version."""
        described = self.visit.reel.sheet_version if self.visit else None
        return described is not None and described.sheet_id == self.version.sheet_id

    @cached_property
    def visit_way(self) -> str:
        return doors.way_to("diary:diary", self.visit.tag) if self.visit else ""

    @cached_property
    def blocks(self) -> tuple[Block, ...]:
        return blocks_of([self.visit.pk])[self.visit.pk] if self.visit_fits else ()

    @cached_property
    def findings(self) -> tuple[Any, ...]:
        return tuple(b.part for b in self.blocks if b.kind == "finding" and not b.is_struck)

    @cached_property
    def rings(self) -> tuple[Ringed, ...]:
        return pictures.ringed(self.sheet, self.blocks)

    @property
    def found_on_part(self) -> list[Ringed]:
        return [ring for ring in self.rings if ring.part == self.part_asked]

    # --- what it is expected to do ---------------------------------------------------------------------

    @cached_property
    def taken(self) -> tuple[FrozenTaken, ...]:
        return frozen(readings.taken_as_found(self.visit.pk)) if self.visit_fits else ()

    @cached_property
    def learned(self) -> Lessons:
        return book.lessons()

    @cached_property
    def prediction(self) -> Prediction:
        return expected.prediction(self.sheet, self.taken, self.system, self.learned)

    def value(self, name: str) -> Predicted | None:
        return self.prediction.values.get(name)

    def told(self, name: str, title: str) -> Expected | None:
        value = self.value(name)
        return expected.told(value, title, self.system, self.prediction.setting) if value else None

    @property
    def control(self) -> str:
        """What sets the drag of this reel."""
        return self.sheet.drag.control if self.sheet.drag else "star"

    @property
    def ends_first(self) -> str:
        """What ends the greatest pull, to stand inside a sentence."""
        said = self.prediction.limited_by
        return said[:1].lower() + said[1:]

    @property
    def springs_end(self) -> bool:
        """Whether it is the springs, lying flat, that end the pull."""
        return self.prediction.limited_by.startswith(LIMITS[0].capitalize())

    @property
    def pulls(self) -> list[Expected]:
        return [found for name, title in FILLS if (found := self.told(name, title))]

    @property
    def start_up(self) -> Expected | None:
        return self.told("start_up_ratio", "Start-up over running pull")

    @property
    def torque(self) -> Expected | None:
        return self.told("drag_torque", "Torque on the spool")

    @property
    def spin(self) -> Expected | None:
        return self.told("spin_time", "Free spin")

    @property
    def spin_starts(self) -> str:
        value = self.value("spin_time")
        return value.quantity.partition(", ")[2] if value else ""

    @property
    def line_per_turn(self) -> Expected | None:
        return self.told("line_per_turn", "Line for one turn of the handle, full spool")

    @property
    def line_per_low_turn(self) -> Expected | None:
        return self.told("line_per_turn_low", "The same in the low gear")

    @property
    def strike(self) -> Expected | None:
        return self.told("pull_at_strike", "At the strike stop, full spool")

    @property
    def no_spin(self) -> str:
        """Why there is no free spin, where the kind has none."""
        return self.prediction.why_not.get("spin_time", "")

    @property
    def turns_heading(self) -> str:
        return f"pull by {self.prediction.setting.by.removeprefix('the ')}"

    @property
    def gear_ratio(self) -> str:
        return expected.ratio_in_words(self.sheet)

    @cached_property
    def doubts(self) -> list[str]:
        """What a person should look at: the order of the stack, pressures, parts that are not listed."""
        return list(dict.fromkeys((*self.prediction.warnings, *remarks(self.sheet), *self.prediction.notes)))

    @cached_property
    def turns_chart(self) -> Chart | None:
        return pull_charts.by_turns(self.sheet, self.prediction, thawed(self.taken), self.system)

    @cached_property
    def fill_chart(self) -> Chart | None:
        return pull_charts.by_fill(self.sheet, self.prediction, thawed(self.taken), self.system)

    @cached_property
    def stack(self) -> StackInWords | None:
        return stack_in_words(self.sheet, self.system)

    @cached_property
    def line_form(self) -> LineForm:
        return LineForm.of(self)

    @cached_property
    def target_form(self) -> TargetForm:
        return TargetForm.of(self)

    # --- the rest of the sheet ---------------------------------------------------------------------------

    @property
    def bearings(self) -> list[tuple[str, str]]:
        return [(one.place, known_of_spool.bearing_in_short(one)) for one in self.sheet.bearings]

    @property
    def screws(self) -> list[tuple[str, str]]:
        return [
            (one.place, f"{one.count} of {one.thread} by {self.stated(one.length)}, {one.material}")
            for one in self.sheet.screws
        ]

    def stated(self, length: float) -> str:
        return shown.unbroken(quantities.show_stated(length, "length", self.system))
