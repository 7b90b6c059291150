"""A noise as it is read: the verdict with how sure it is, what it rests on, and its spectrum."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.words import shown
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.shop.questions.kept_noise import BEARING, GEARS, KeptNoise

VERDICTS = {
    "outer": "Outer ring damaged",
    "inner": "Inner ring damaged",
    "ball": "A ball damaged",
    "cage": "Cage damaged",
    "sound": "Sound, as far as this recording can show",
    "main": "A tooth of the main gear knocks",
    "pinion": "A tooth of the pinion knocks",
    "idler": "A tooth of the wheel between them knocks",
    "cannot tell": "Cannot tell",
}
FOUND = {
    "outer": "outer ring",
    "inner": "inner ring",
    "ball": "ball",
    "cage": "cage",
}
WHEELS = ("main", "pinion", "idler")
LIMITS = {
    BEARING: "A recording shows damage that knocks. Dirt, dryness and a worn fit are for hand and eye.",
    GEARS: "A recording shows a tooth that knocks. Even wear and play are for the caliper and the eye.",
}


def verdict(kept: KeptNoise) -> str:
    """The verdict in one sentence with its grade."""
    words = VERDICTS.get(kept.verdict, kept.verdict)
    if not kept.confidence:
        return f"{words}."
    return f"{words}. Grade of the evidence: {kept.confidence:.2f} of 1; no measured chance."


def in_words(kept: KeptNoise, system: str) -> tuple[str, ...]:
    """Everything that is said of a noise, the verdict first."""
    if kept.speed is None:
        how = "Heard while the spool coasted."
    else:
        held = "Held" if kept.about == BEARING else "The handle turned"
        how = f"{held} at {shown.quantity(kept.speed, 'rotation', system)}."
    said = (verdict(kept), f"{kept.place[:1].upper()}{kept.place[1:]}. {how}", *kept.evidence)
    return tuple(shown.together(line) for line in (*said, LIMITS[kept.about]))


def chart(kept: KeptNoise, system: str, width: int | None = None) -> Chart:
    """The spectrum of a noise that was long enough to have one."""
    if kept.about == GEARS:
        return _wheel_chart(kept, system, width)
    drawn = charts.Noise(
        frequencies=kept.frequencies,
        swelling=kept.swelling,
        named=kept.named,
        unit=kept.unit,
        low=kept.low,
        high=kept.high,
        verdict=kept.verdict,
        found=FOUND.get(kept.verdict, ""),
    )
    return charts.noise_lines(drawn, system=system, width=width)


def _wheel_chart(kept: KeptNoise, system: str, width: int | None) -> Chart:
    name, teeth = kept.named[0]
    drawn = charts.Wheel(
        name=name,
        teeth=int(teeth),
        places=kept.frequencies,
        loudness=tuple(1 + swelling for swelling in kept.swelling),
        low=kept.low,
        high=kept.high,
        verdict=kept.verdict,
        found=kept.verdict in WHEELS,
    )
    return charts.round_the_wheel(drawn, system=system, width=width)


def drawn(kept: KeptNoise, system: str) -> dict[str, Any]:
    """What the open block shows before anything is written."""
    return {
        "chart": chart(kept, system) if kept.frequencies else None,
        "verdict": verdict(kept),
        "said": in_words(kept, system)[1:],
        "notes": kept.notes,
    }
