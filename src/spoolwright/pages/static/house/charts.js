/* Draws every [data-chart="ID"] from <script type="application/json" id="ID">, in the colours of the paper.
   The picture is one image with words for a screen reader; the numbers stand in the table beside it.
   When all are drawn, <body data-charts-drawn> says so. */
"use strict";
(() => {
  const root = document.documentElement;
  const paint = (name) => getComputedStyle(root).getPropertyValue(name).trim();

  /* The accent of papers/ink.py has to do on any ground; a page knows its ground and takes its own live ink. */
  const ACCENT = "#8660c0";

  function house() {
    const ink = paint("--ink"), edge = paint("--edge"), size = 13;
    const lettered = { labelFontSize: size, titleFontSize: size, labelColor: ink, titleColor: ink, domainColor: edge, tickColor: edge };
    return { aria: false, axis: lettered, text: { fontSize: size, color: ink } };
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
    if (part === ACCENT) return paint("--live");
    if (Array.isArray(part)) return part.map(inked);
    if (part && typeof part === "object") return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, inked(value)]));
    return part;
  }

  async function draw(place) {
    const source = document.getElementById(place.dataset.chart);
    if (!source) return;
    const spec = inked(JSON.parse(source.textContent));
    spec.config = merge(spec.config || {}, house());
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
