/* Draws every [data-chart="ID"] from <script type="application/json" id="ID">, in the colours of the paper.
   The picture is one image with words for a screen reader; the numbers stand in the table beside it.
   When all are drawn, <body data-charts-drawn> says so. */
"use strict";
(() => {
  const root = document.documentElement;
  const paint = (name) => getComputedStyle(root).getPropertyValue(name).trim();

  /* Named inks a specification may use, so that one specification serves paper, slate and PDF. */
  const inks = { ink: "--ink", soft: "--soft-ink", edge: "--edge", hairline: "--hairline", live: "--live", paper: "--paper" };

  function house() {
    const ink = paint("--ink"), soft = paint("--soft-ink"), edge = paint("--edge"), live = paint("--live");
    const face = "Routed Gothic", size = 14;
    return {
      background: "transparent", font: face, padding: 2, aria: false,
      view: { stroke: null, continuousWidth: 640, continuousHeight: 230 },
      axis: { domainColor: edge, tickColor: edge, gridColor: paint("--hairline"), gridWidth: 0.5, labelColor: ink, titleColor: ink,
        labelFont: face, titleFont: face, labelFontSize: size, titleFontSize: size, titleFontWeight: "normal", labelFlush: true },
      axisX: { grid: false }, header: { labelColor: ink, titleColor: ink, labelFont: face, titleFont: face },
      title: { color: ink, font: "Libertinus Serif", fontWeight: "normal", anchor: "start", fontSize: 18 },
      legend: { labelColor: ink, titleColor: ink, labelFont: face, titleFont: face, labelFontSize: size, titleFontSize: size },
      line: { color: live, strokeWidth: 1.8 }, point: { color: live, filled: true, size: 40 }, rule: { color: edge }, tick: { color: ink },
      area: { color: edge, opacity: 0.25 }, rect: { color: edge, opacity: 0.25 }, bar: { color: edge },
      text: { color: ink, font: face, fontSize: size }, range: { category: [live, ink, soft, edge] },
      style: {
        measured: { stroke: live }, "measured-point": { fill: live }, before: { stroke: soft, strokeDash: [2, 3] },
        fitted: { stroke: ink, strokeDash: [6, 3] }, promised: { fill: edge, fillOpacity: 0.25 }, limit: { stroke: ink, strokeWidth: 1 },
        label: { fill: ink, font: face, fontSize: size },
      },
    };
  }

  function merge(under, over) {
    const both = { ...under };
    for (const [key, value] of Object.entries(over)) {
      const plain = value && typeof value === "object" && !Array.isArray(value);
      both[key] = plain && both[key] && typeof both[key] === "object" ? merge(both[key], value) : value;
    }
    return both;
  }

  function inked(part) {
    if (typeof part === "string") return part.startsWith("ink:") && inks[part.slice(4)] ? paint(inks[part.slice(4)]) : part;
    if (Array.isArray(part)) return part.map(inked);
    if (part && typeof part === "object") return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, inked(value)]));
    return part;
  }

  async function draw(place) {
    const source = document.getElementById(place.dataset.chart);
    if (!source) return;
    const spec = inked(JSON.parse(source.textContent));
    spec.config = merge(spec.config || {}, house());
    if (!spec.width && !spec.hconcat && !spec.vconcat) { spec.width = "container"; spec.autosize = { type: "fit-x", contains: "padding" }; }
    if (place.view) place.view.finalize();
    const drawn = await vegaEmbed(place, spec, { ast: true, actions: false, defaultStyle: false, renderer: "svg", tooltip: { disableDefaultStyle: true } });
    place.view = drawn.view;
    place.setAttribute("role", "img");
    if (spec.description && !place.hasAttribute("aria-label")) place.setAttribute("aria-label", spec.description);
    place.querySelector("svg")?.setAttribute("aria-hidden", "true");
    place.dataset.drawn = "yes";
  }

  async function drawAll() {
    const places = [...document.querySelectorAll("[data-chart]")];
    await document.fonts.load("14px 'Routed Gothic'");
    for (const place of places) {
      try { await draw(place); } catch (fault) { say(place, fault); }
    }
    document.body.dataset.chartsDrawn = String(places.length);
  }

  function say(place, fault) {
    place.textContent = "The picture could not be drawn; the numbers stand in the table.";
    place.dataset.drawn = "no";
    console.error(fault);
  }

  document.addEventListener("htmx:afterSettle", () => { if (document.querySelector("[data-chart]:not([data-drawn])")) drawAll(); });
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", drawAll);
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", drawAll); else drawAll();
})();
