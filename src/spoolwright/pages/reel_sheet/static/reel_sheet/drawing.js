/* A part of the drawing that is touched, or stood on with the keyboard, opens beside it without leaving the page.
   Every part is a link that does the same alone. A thumb that misses a thin part is given the nearest one. */
"use strict";
(() => {
  const NEAR = 26, PAUSE = 250;
  const drawing = () => document.getElementById("drawing");
  const narrow = () => matchMedia("(max-width: 55.99rem)").matches;
  const linkOf = (where) => where.closest?.("a[data-part]");
  let pause = 0;

  function mark(key) {
    for (const one of drawing().querySelectorAll("[data-part]")) {
      const chosen = one.dataset.part === key;
      one.classList.toggle("chosen", chosen);
      if (one.matches("a.part")) chosen ? one.setAttribute("aria-current", "true") : one.removeAttribute("aria-current");
    }
    const kept = document.getElementById("id_part");
    if (kept) kept.value = key;
  }

  async function open(link, led) {
    const way = link.getAttribute("href").split("#")[0], key = link.dataset.part;
    const shown = document.getElementById("known");
    mark(key);
    if (shown.dataset.here !== key) {
      await htmx.ajax("GET", location.pathname + way, { target: "#known", swap: "outerHTML", source: "#known" });
      history.replaceState(history.state, "", way);
    }
    if (!led) return;
    const known = document.getElementById("known");
    known.focus({ preventScroll: true });
    if (narrow() || known.getBoundingClientRect().top > innerHeight * 0.8 || known.getBoundingClientRect().top < 0) known.scrollIntoView({ block: "start" });
  }

  function distance(box, x, y) {
    return Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
  }

  /* The smallest thing within reach of the thumb: a washer lies inside the reach of a plate. */
  function nearest(x, y) {
    const touchable = [...drawing().querySelectorAll("a.part, .leader-to text")].filter((one) => one.getClientRects().length);
    const near = touchable.map((one) => ({ one, box: one.getBoundingClientRect() }))
      .map(({ one, box }) => ({ one, away: distance(box, x, y), size: box.width * box.height })).filter(({ away }) => away <= NEAR);
    near.sort((a, b) => a.away - b.away || a.size - b.size);
    return near[0] && linkOf(near[0].one);
  }

  document.addEventListener("click", (event) => {
    if (event.defaultPrevented || event.button || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const link = linkOf(event.target) || (drawing()?.contains(event.target) && event.target.closest("svg") ? nearest(event.clientX, event.clientY) : null);
    if (!link || !window.htmx) return;
    event.preventDefault();
    clearTimeout(pause);
    open(link, true);
  });
  document.addEventListener("focusin", (event) => {
    clearTimeout(pause);
    const link = event.target.matches?.("a.part") && event.target.matches(":focus-visible") ? event.target : null;
    if (link && window.htmx) pause = setTimeout(() => open(link, false), PAUSE);
  });
  document.addEventListener("htmx:beforeRequest", (event) => {
    if (event.target.matches?.(".switches")) document.querySelectorAll("#level-field .field-error").forEach((said) => said.remove());
  });
})();
