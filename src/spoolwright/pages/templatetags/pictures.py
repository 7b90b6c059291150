"""{% load pictures %}: {% chart c "pull-12" %} sets a chart of papers.charts, with its numbers."""

from __future__ import annotations

from typing import Any

from django import template

from spoolwright.papers.charts import Chart

register = template.Library()


@register.inclusion_tag("_chart.html")
def chart(drawn: Chart, name: str) -> dict[str, Any]:
    """`name` is the chart's own on its page. The page loads _chart_scripts.html in its scripts block."""
    return {"chart": drawn, "name": f"chart-{name}"}
