"""One writer for each kind of entry: the form, the act, and nothing else."""

from collections.abc import Callable

from django.http import HttpResponse

from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.writers import (
    agreements,
    bench,
    by_hand,
    gone_home,
    inertia,
    live,
    noise,
    plain,
    readings,
    series,
)

Writer = Callable[[Desk], HttpResponse]

WRITERS: dict[str, Writer] = {
    "reading": readings.choose,
    "pull": readings.pull,
    "live": live.live,
    "series": series.series,
    "spin": readings.spin,
    "inertia": inertia.inertia,
    "bearing": noise.bearing,
    "gears": noise.gears,
    "hand": by_hand.hand,
    "finding": bench.finding,
    "work": bench.work,
    "quote": agreements.quote,
    "answer": agreements.answer,
    "payment": agreements.payment,
    "invoice": agreements.invoice,
    "proof": gone_home.proof,
    "dispatch": gone_home.dispatch,
    "arrival": plain.word,
    "nothing": plain.word,
    "word": plain.word,
    "move": plain.move,
    "promise": plain.promise,
}
"""By the word in the address; those that say what comes next are words of judgement too."""
