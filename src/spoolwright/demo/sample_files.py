"""The files with which a newcomer takes a waiting reel from its arrival to its proof.

They fit the reel: what they say before the work makes an offer, and what they say after it keeps the offer's
promise.
"""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from random import Random

from spoolwright import quantities
from spoolwright.bench import typed
from spoolwright.demo import measuring, study_file
from spoolwright.demo.nature import WARM, Nature, known, mended
from spoolwright.demo.newcomers import NEWCOMERS, Newcomer
from spoolwright.demo.stay import BARE, pull_conditions, three_tries
from spoolwright.judgement.quote_options import Option, three_options
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.taken import Taken
from spoolwright.shop.questions.shop_settings import rates

FOLDER = "demo-files"
STYLES = ("semicolon", "plain", "one column")
"""Each reel's gauge writes its own kind of file: decimal comma, plain SI, one column with a rate above it."""

WAY = """\
Reel {tag}, {name}: from its arrival to its proof
=================================================

The reel lies on the mat with the tag {tag}. Take the readings from the folder "before", write the
finding, send the quote, answer it for the customer, write the work, take the readings from the folder
"after", and prove. Sums and promises are worked out from your readings; what the files say after the
work keeps the promise of the option "Improve".

All of it is invented. Line under load whips back: at a real bench, eyes covered and nobody in line
with the pull.
"""


def files(tags: tuple[int, ...], shop: ShopRates | None = None) -> dict[str, bytes]:
    """Every file by its path below the folder."""
    charged = shop or rates()
    found: dict[str, bytes] = {study_file.NAME: study_file.discs()}
    for number, (tag, newcomer) in enumerate(zip(tags, NEWCOMERS, strict=True)):
        reel = known(newcomer.slug).reel
        after = mended(newcomer.nature, improve(newcomer, charged), Random(tag))
        head = {"tag": tag, "name": f"{reel.maker} {reel.model}"}
        found[f"reel-{tag}/how-to.txt"] = WAY.format(**head).encode()
        for when, nature in (("before", newcomer.nature), ("after", after)):
            style = STYLES[number]
            pull = measuring.pull(nature, 9000 + number, style).data
            wav = measuring.spin(nature, 9100 + number, None, "spin.wav").data
            found[f"reel-{tag}/{when}/pull-half-drag.csv"] = pull
            found[f"reel-{tag}/{when}/spin.wav"] = wav
            found[f"reel-{tag}/{when}/calipers.txt"] = notes(newcomer, nature, when).encode()
    return found


def write(folder: Path, tags: tuple[int, ...]) -> Path:
    """Write them below a folder; gives back where they lie."""
    below = folder / FOLDER
    for name, data in files(tags).items():
        path = below / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    return below


def improve(newcomer: Newcomer, charged: ShopRates) -> Option:
    """What the readings of the folder "before" come to."""
    return three_options(known(newcomer.slug), readings(newcomer), [newcomer.finding], charged, seed=1)[1]


def readings(newcomer: Newcomer) -> dict[str, Taken]:
    """What somebody reads who takes the files of the folder "before"."""
    nature = newcomer.nature
    number = NEWCOMERS.index(newcomer)
    read = measuring.pull(nature, 9000 + number, STYLES[number]).read
    at_half = {**pull_conditions(nature.radius), "star_turns": nature.star_turns}
    found = {
        "pull_start": Taken("pull_start", read.start_up, at_half),
        "pull_run": Taken("pull_run", read.running, at_half),
        "start_up_ratio": Taken("start_up_ratio", read.start_up_ratio, at_half),
        "judder": Taken("judder", read.judder, at_half),
    }
    for kind, text in typed_texts(nature).items():
        conditions = pull_conditions(nature.radius) if kind == "pull_full" else BARE
        found[kind] = Taken(kind, typed.read(kind, text).measured, conditions)
    return found


def typed_texts(nature: Nature) -> Mapping[str, str]:
    """What is typed, kind by kind."""
    return {
        "mass": f"{1000 * nature.mass:.0f} g",
        "end_float": f"{1000 * nature.end_float:.2f} mm",
        "feel": str(nature.feel),
        "spin_time": "; ".join(f"{nature.spins * part:.0f} s" for part in (0.98, 1.0, 1.02)),
        "pull_full": three_tries(nature),
    }


def notes(newcomer: Newcomer, nature: Nature, when: str) -> str:
    """The bench's slip of paper: every number with its conditions."""
    texts, warm = typed_texts(nature), quantities.show(WARM, "temperature")
    radius = quantities.show(nature.radius, "length")
    lines = [
        f"{'Before' if when == 'before' else 'After'} the work, at {warm}",
        "",
        f"mass without line        {texts['mass']}",
        f"spool end-float          {texts['end_float']}",
        f"feel of the handle       {texts['feel']}   (0 smooth, 5 grinds and stops)",
        f"free spin, stopwatch     {texts['spin_time']}",
        "                         line off, brakes off, started by the falling weight",
        f"full drag, star hard on  {texts['pull_full']}",
        f"                         hanging scale, line on, leaving at {radius}, third pull of three",
        "",
        f"pull-half-drag.csv       star {nature.star_turns:g} turns from free, line on, leaving at {radius},",
        "                         third pull of three; gauge: 0.5 % of what it shows, steps of 10 g",
        "spin.wav                 one tick a turn; line off, brakes off",
    ]
    if when == "before":
        found = newcomer.finding
        lines += ["", f"found: {found.part}: {found.words} (row {found.fault} of the fault table)"]
    return "\n".join([*lines, ""])
