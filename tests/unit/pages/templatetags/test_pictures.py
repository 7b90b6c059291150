"""A chart on a page: its data cannot break out of the page, its numbers stand beside it."""

from __future__ import annotations

import json
import re

from django.template import Context, Template

from spoolwright.papers.charts import Chart


def drawn(chart: Chart) -> str:
    return Template('{% load pictures %}{% chart c "pull-1" %}').render(Context({"c": chart}))


def test_the_specification_arrives_whole_and_as_data() -> None:
    spec = {"description": "A </script><script>alert(1)</script> trace", "layer": []}
    html = drawn(Chart(spec, "It sticks.", ("time", "pull"), (("0.5 s", "3.90 kg"),)))
    assert html.count("<script") == 1
    found = re.search(r'<script id="chart-pull-1" type="application/json">(.*?)</script>', html, re.DOTALL)
    assert json.loads(found[1]) == spec
    assert 'data-chart="chart-pull-1"' in html


def test_the_same_numbers_stand_in_a_table_with_heads() -> None:
    html = drawn(Chart({"description": "d"}, "It sticks.", ("time", "pull"), (("0.5 s", "3.90 kg"),)))
    assert '<th scope="col">time</th>' in html
    assert '<td class="number">3.90 kg</td>' in html
    assert "It sticks." in html
