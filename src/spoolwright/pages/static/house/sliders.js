/* A slider says its number while it is moved; its form hears "slid" and asks the house again a little later.
   Without this script the form asks when the slider is let go. */
"use strict";
(() => {
  const slideOf = (event) => event.target.matches?.(".slider > .slide") ? event.target : null;

  function told(slide) {
    const words = [slide.value, slide.dataset.word].filter(Boolean).join(" ");
    const output = document.getElementById(slide.id.replace(/_slide$/, "_said"));
    if (output) output.textContent = words;
    slide.setAttribute("aria-valuetext", words);
    slide.form.dispatchEvent(new Event("slid"));
  }

  document.addEventListener("input", (event) => { const slide = slideOf(event); if (slide) told(slide); });
  /* Letting go is no second question. */
  document.addEventListener("change", (event) => { const slide = slideOf(event); if (slide && window.htmx) { event.stopPropagation(); told(slide); } }, true);
  /* A message that stood on the page as it came gives way to the one that the answer brings. */
  document.addEventListener("htmx:beforeRequest", (event) => {
    if (event.target.matches?.(".sliders")) event.target.querySelectorAll(".field > .field-error").forEach((said) => said.remove());
  });
})();
