"""The pier reel with a catching level wind, as far along the bench as a test of a page needs it.

Source of its readings and sums: the trade handbook, chapter 9, scenario 1.
"""

from __future__ import annotations

from typing import Any

from django.test import Client

from spoolwright.bench import pull_trace
from spoolwright.bench.gauge import Gauge
from spoolwright.demo import signals
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.acts.take_reading import Value, take_reading
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.reel_sheets import version
from spoolwright.shop.records.quote import Quote
from tests.pages.sent import as_shown
from tests.shop import walk

HALF = {**walk.PULLS, "star_turns": 2.5}
SPIN = {"line": "off", "brakes": "off", "temperature": 291.15}


def signed_in(person: Any) -> Client:
    client = Client()
    client.force_login(person)
    return client


def pull(hand: Any, visit: Any, running_kg: float, ratio: float) -> Any:
    """A pull trace at half drag, out of the gauge's own file."""
    shape = signals.PullShape(running=running_kg * walk.G, start_up_ratio=ratio)
    trace = pull_trace.read(signals.pull_trace(shape).to_csv(), name="pull.csv")
    read = pull_trace.analyse(trace, Gauge(accuracy_of_reading=0.005))
    return take_pull(hand=hand, visit=visit, pulled=Pulled(trace, read), conditions=HALF).entry


def read(hand: Any, visit: Any, kind: str, value: float, u: float, dimension: str, **where: Any) -> Any:
    values = [Value(kind, value, dimension, u)]
    return take_reading(hand=hand, visit=visit, values=values, conditions=where).entry


def on_the_mat(hand: Any, *, sheet: bool = True) -> Any:
    """It has arrived; its sheet is the shipped one."""
    visit = walk.arrived(hand)
    if sheet:
        known = version("tarvak-58r")
        if known is None:
            known = walk.add_sheet_version(hand=hand, toml=walk.reel_sheet.shipped()["tarvak-58r"])
        reel = visit.reel
        describe_reel(hand=hand, reel=reel, sheet_version=known, version=reel.version)
    return by_number.visit(visit.pk)


def found(hand: Any) -> Any:
    """Read and looked at: start over run 3.9 to 2.6 kg, full 5.8 kg, float 0.42 mm, spin 11 s, feel 3."""
    visit = on_the_mat(hand)
    pull(hand, visit, 2.6, 1.5)
    read(hand, visit, "pull_full", 5.8 * walk.G, 0.5, "force", **HALF)
    read(hand, visit, "end_float", 0.42e-3, 1e-5, "length")
    read(hand, visit, "spin_time", 11.0, 0.4, "time", **SPIN)
    read(hand, visit, "feel", 3.0, 0.3, "score")
    walk.write_finding(
        hand=hand, visit=visit, part="pawl", fault="F15", evidence="worn to a hook; catches at the right end"
    )
    return visit


def quoted(client: Client, visit: Any, **changes: Any) -> Quote:
    """The quote as the page proposes it, asked."""
    address = f"/visits/{visit.tag}/quote/"
    sent = as_shown(client, address, "moved_to") | {"do": ["ask"]} | changes
    response = client.post(address, sent)
    assert response.status_code == 302, response.content.decode()
    return Quote.objects.latest("entry_id")


def answered(hand: Any, quote: Quote, place: int = 1, cap: int | None = 1200_00) -> Any:
    """A yes to the second option, up to 1,200."""
    said = Said("Ragna Solbu", "telephone", "yes, up to 1,200", cap)
    option = quote.options.all()[place]
    return record_answer(hand=hand, quote=quote, option=option, said=said).entry


def worked(hand: Any, visit: Any) -> Any:
    """Everything that was agreed, in 74 minutes."""
    parts = [walk.Fitted("pawl"), walk.Fitted("spool bearing", 2), walk.Fitted("carbon disc set")]
    works = [work for answer in agreed(visit.pk).answers for work in answer.option.works.all()]
    done = [walk.Done(work.work, work.title) for work in works]
    return walk.write_work(hand=hand, visit=visit, labour=walk.Labour(done, 74, parts)).entry


def read_again(hand: Any, visit: Any) -> None:
    """After the work: 2.9 to 2.7 kg, full 6.9 kg, float 0.09 mm, spin 31 s."""
    pull(hand, visit, 2.7, 1.07)
    read(hand, visit, "pull_full", 6.9 * walk.G, 0.5, "force", **HALF)
    read(hand, visit, "end_float", 0.09e-3, 5e-6, "length")
    read(hand, visit, "spin_time", 31.0, 0.8, "time", **SPIN)


def ready_to_prove(hand: Any, client: Client) -> Any:
    visit = found(hand)
    answered(hand, quoted(client, visit))
    worked(hand, visit)
    read_again(hand, visit)
    return visit
