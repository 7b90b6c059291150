"""Papers of the house's invented people, for the tests: scenario 1 of the trade handbook, invented sums."""

import numpy as np

from spoolwright.bench.uncertainty import Measured
from spoolwright.papers import bag_tag, charts, invoice, proof_sheet, quote, reading_sheet
from spoolwright.papers.figures import Span
from spoolwright.papers.parties import Addressee, House, ReelMark
from spoolwright.papers.typesetting import Picture

KILO = 9.80665
NASTY = "Åse #set text(red) *b* _i_ $x$ <b>&amp; \"q\" 'q' \\ #panic() [x] 🐟 山 " + "w" * 300

SHOP = House(
    "Kvie & Vannes", ("Bryggegata 4", "Grånesvåg"), ("bench@kvie.example", "tel. 17"), "business no. 17"
)
CUSTOMER = Addressee("Ragna Solbu", ("Nordre Molo 11", "9999 Grånesvåg"))
REEL = ReelMark("58R-017", "Tarvak 58R", "338 g with line")
SQUARE = Picture(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><rect width="9" height="9"/></svg>', "square"
)


def pull(kilos: float, uncertainty: float = 0.05) -> Measured:
    return Measured(kilos * KILO, uncertainty * KILO, "force")


def promised(low: float, middle: float, high: float) -> Span:
    return Span(middle * KILO, low * KILO, high * KILO, "force")


def trace(start: float = 3.9, run: float = 2.6) -> tuple[list[float], list[float]]:
    """A pull in s and N: still, rising from 1 s, slipping from 1.5 s to 7 s, let go."""
    times = np.arange(0, 8, 0.005)
    rising = np.where(times < 1, 0.0, (times - 1) / 0.5 * start)
    slipping = run + (start - run) * np.exp(-(times - 1.5) / 0.25) + 0.04 * run * np.sin(19 * times)
    forces = np.where(times < 1.5, rising, np.where(times < 7, slipping, run * np.exp(-(times - 7) / 0.2)))
    return list(times), list(forces * KILO)


def pull_chart(**how: object) -> charts.Chart:
    times, forces = trace()
    shown = charts.Pull(times, forces, 1.5, 7.0, pull(3.9), pull(2.6, 0.04), promised(6.2, 6.9, 7.6))
    return charts.pull_trace(shown, **how)  # type: ignore[arg-type]


def spin(mended: int = 3) -> charts.Spin:
    times = np.cumsum(np.linspace(0.02, 0.6, 90))
    fitted = 300 * (1 - times / times[-1] * 0.93)
    speeds = fitted + np.where(np.arange(90) % 2, 2.0, -2.0)
    return charts.Spin(
        list(times),
        list(speeds),
        list(fitted),
        [k % 30 == 7 and k // 30 < mended for k in range(90)],
        Measured(31.0, 0.6, "time"),
    )


def tag(**changes: object) -> bag_tag.BagTag:
    told = {
        "number": "58R-017",
        "reel": "Tarvak 58R",
        "owner": "Ragna Solbu",
        "arrived": "12 March 2026",
        "address": "https://bench.example/passport/58r-017",
        "shop": "Kvie & Vannes",
        "place": "mat",
        "marks": ("338 g with line",),
        "belongs": "one of 2 in envelope 117",
    }
    return bag_tag.BagTag(**(told | changes))  # type: ignore[arg-type]


def offers() -> tuple[quote.Offer, ...]:
    tax = (quote.PriceLine("of which tax, 25 %", "220.80 kr"),)
    lines = (
        quote.PriceLine("Common tune", "520 kr"),
        quote.PriceLine("Pawl", "95 kr", "sure"),
        quote.PriceLine("Two spool bearings", "170 kr"),
        quote.PriceLine("Carbon set", "190 kr"),
        quote.PriceLine("Return post", "129 kr"),
    )
    full = quote.Promise("Pull, full spool", promised(6.2, 6.9, 7.6), "line leaving at 23.5 mm")
    spin_time = quote.Promise("Free spin", Span(31.0, 24.0, 40.0, "time"), "brakes off")
    return (
        quote.Offer(
            "Put right",
            "It winds level again.",
            "785 kr",
            ("Pawl renewed",),
            "55 min",
            (spin_time,),
            lines[:3],
        ),
        quote.Offer(
            "Improve",
            "And the drag starts without a jerk.",
            "1,104 kr",
            ("Carbon set",),
            "68 min",
            (full, spin_time),
            lines,
            tax,
            ("The plating stays as it is",),
            ("Keep to 6.9 kg",),
            ("three pulls at 23.5 mm",),
            "The trade asks about 500 kr (common practice, no source)",
            "The weakest part behind the drag, the pinion, gives 30 % above it.",
        ),
        quote.Offer(
            "The most this reel should be given", "As far as the frame carries.", "1,690 kr", promises=(full,)
        ),
    )


def a_quote(**changes: object) -> quote.Quote:
    told = {
        "shop": SHOP,
        "customer": CUSTOMER,
        "reel": REEL,
        "number": "31",
        "date": "14 March 2026",
        "valid_until": "14 April 2026",
        "offers": offers(),
        "asked": "It sticks when a fish runs.",
        "found": (quote.Found("Start-up pull, half drag", pull(3.9), "line on, 23.5 mm"),),
        "ceiling_percent": "15 %",
        "ceiling_source": "service act § 32",
        "answer_address": "https://bench.example/q/3f9c",
        "cautions": ("Hook off while you test a drag.",),
        "trace": SQUARE,
    }
    return quote.Quote(**(told | changes))  # type: ignore[arg-type]


def a_proof(**changes: object) -> proof_sheet.ProofSheet:
    told = {
        "shop": SHOP,
        "customer": CUSTOMER,
        "reel": REEL,
        "number": "P-31",
        "date": "21 March 2026",
        "proved": (
            proof_sheet.Proved(
                "Running pull, full drag",
                promised(6.2, 6.9, 7.6),
                pull(6.9),
                "shown",
                pull(5.8),
                "at 23.5 mm",
                "",
                "1 in 60",
            ),
            proof_sheet.Proved(
                "Free spin",
                "24 to 40 s",
                Measured(26.0, 2.5, "time"),
                "not shown",
                words="It may lie too low.",
            ),
        ),
        "rule": "Shown when the whole interval lies inside what was promised.",
        "done": ("Carbon set fitted",),
        "pull": pull_chart(width=charts.PAPER_WIDTH),
        "spin": charts.spin_down(spin(), width=charts.PAPER_WIDTH),
        "drag_table": proof_sheet.DragTable("23.5 mm", (("1", pull(2.7), Measured(0.622, 0.01, "torque")),)),
        "instruments": (
            proof_sheet.Instrument("Hanging gauge, 20 kg", "± 0.5 % of the reading", "2 February"),
        ),
        "signed": (proof_sheet.Signature("Torbal Kvie", "measured", "21 March 2026"),),
        "cautions": ("A line under load cuts.",),
    }
    return proof_sheet.ProofSheet(**(told | changes))  # type: ignore[arg-type]


def an_invoice(**changes: object) -> invoice.Invoice:
    told = {
        "shop": SHOP,
        "customer": CUSTOMER,
        "reel": REEL,
        "number": "1044",
        "date": "21 March 2026",
        "due_date": "4 April 2026",
        "total": "1,169 kr",
        "due": "969 kr",
        "deposit": "200 kr",
        "lines": (
            invoice.InvoiceLine("Common tune", "520 kr", "68 min"),
            invoice.InvoiceLine("Pawl", "95 kr", "1", "95 kr", "new"),
            invoice.InvoiceLine("Idler cog", "65 kr", "1", "65 kr", "own-made"),
        ),
        "tax": (invoice.TaxLine("25 %", "935.20 kr", "233.80 kr"),),
        "tax_words": "Prices hold the tax.",
        "pay_to": "account 17",
        "quoted": "1,104 kr",
        "answered": "yes, up to 1,200",
        "differences": (invoice.Difference("+ 65 kr", "Idler cog found split"),),
        "old_parts": ("Pawl", "Split idler cog"),
        "care": ("Store with the drag off.",),
        "warranty": "Two years on our work.",
        "next_service": "In nine to twelve months.",
    }
    return invoice.Invoice(**(told | changes))  # type: ignore[arg-type]


def a_reading(**changes: object) -> reading_sheet.ReadingSheet:
    told: dict[str, object] = {
        "shop": SHOP,
        "customer": CUSTOMER,
        "reel": REEL,
        "number": "88-R7",
        "date": "3 March 2026",
        "title": "Reading of your Tarvak 58R: pull trace",
        "facts": (
            ("received", "2 March 2026"),
            ("read", "3 March 2026, 14:10, at the shop"),
            ("issued", "4 March 2026"),
        ),
        "method": ("Straight from the spool, no rod.",),
        "conditions": "line on, radius 23.5 mm",
        "results": (
            reading_sheet.Stated("Start-up pull", pull(3.9)),
            reading_sheet.Stated("Start-up ratio", "1.50", "", "outside", "up to 1.10", "1 in 4,000"),
        ),
        "pictures": (pull_chart(),),
        "instruments": (proof_sheet.Instrument("Load cell L1", "± 0.5 % of the reading", "1 March 2026"),),
        "budget": (reading_sheet.BudgetLine("start-up pull", "gauge", "from what is known", "0.050 kg"),),
        "deviations": ("The gauge's accuracy was not given.",),
        "rule": "Said only where the chance of it being so is at least 95 %.",
        "signed": (proof_sheet.Signature("Torbal Kvie", "read", "3 March 2026"),),
    }
    return reading_sheet.ReadingSheet(**(told | changes))  # type: ignore[arg-type]
