"""Charts: Vega-Lite specifications as plain dicts, the same on a page and on a paper.

Each function gives a `Chart`: its `spec`, the sentence it `says` to the customer, and `head` and `rows` of
a table with the same numbers. `to_svg(spec)` and `picture(chart)` are for papers; `trace_mark` is
a reel's mark.
"""

from spoolwright.papers.charts.band_chart import drag_by_turns, pull_by_fill
from spoolwright.papers.charts.before_after_chart import before_after
from spoolwright.papers.charts.book_chart import Step, coefficient_moves
from spoolwright.papers.charts.flight_chart import Flight, flights
from spoolwright.papers.charts.history_chart import Manner, Then, reading_history
from spoolwright.papers.charts.house_chart import ACCENT, PAPER_WIDTH, Chart, picture, to_svg
from spoolwright.papers.charts.noise_chart import Noise, noise_lines
from spoolwright.papers.charts.pull_chart import Pull, pull_trace
from spoolwright.papers.charts.series_chart import Series, pull_series
from spoolwright.papers.charts.side_by_side_chart import side_by_side
from spoolwright.papers.charts.sparkline import trace_mark
from spoolwright.papers.charts.spin_chart import Spin, spin_down
from spoolwright.papers.charts.states_chart import Along, Curve, Rule, Story, Zone, states
from spoolwright.papers.charts.study_chart import Studied, study
from spoolwright.papers.charts.swing_chart import Swung, swing
from spoolwright.papers.charts.wheel_chart import Wheel, round_the_wheel

__all__ = [
    "ACCENT",
    "PAPER_WIDTH",
    "Along",
    "Chart",
    "Curve",
    "Flight",
    "Manner",
    "Noise",
    "Pull",
    "Rule",
    "Series",
    "Spin",
    "Step",
    "Story",
    "Studied",
    "Swung",
    "Then",
    "Wheel",
    "Zone",
    "before_after",
    "coefficient_moves",
    "drag_by_turns",
    "flights",
    "noise_lines",
    "picture",
    "pull_by_fill",
    "pull_series",
    "pull_trace",
    "reading_history",
    "side_by_side",
    "spin_down",
    "states",
    "round_the_wheel",
    "study",
    "swing",
    "to_svg",
    "trace_mark",
]
