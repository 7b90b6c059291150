/* A minus and a plus beside each count, and a place to write for each reel that is counted out.
   Without this the counts are plain number fields, and the button below the reels lays out one more. */
"use strict";
(() => {
  const form = document.querySelector("form.arrival");
  const count = document.getElementById("id_count_0");
  if (!form || !count) return;
  const MOST = Number(count.max) || 24;
  const blocks = () => [...form.querySelectorAll("[data-row]")];
  const wanted = () => Math.min(Math.max(Math.trunc(Number(count.value)) || 1, 1), MOST);

  /* The address carries the number of reels, so that a reload has a place for everything that was typed. */
  const noted = (reels) => history.replaceState(null, "", reels > 1 ? `?reels=${reels}` : location.pathname);

  function show(block, seen) {
    block.hidden = !seen;
    for (const field of block.querySelectorAll("input, select, textarea")) field.disabled = !seen;
  }

  async function layOut() {
    const reels = wanted();
    noted(reels);
    for (let row = blocks().length; row < reels; row += 1) {
      const chosen = form.querySelector("[name='customer']:checked");
      const asked = new URLSearchParams({ count_0: row + 1, customer: chosen ? chosen.value : "" });
      await htmx.ajax("GET", `${form.getAttribute("action")}reel/?${asked}`, { target: "#reels", swap: "beforeend" });
      if (blocks().length <= row) return;
    }
    blocks().forEach((block, row) => show(block, row < reels));
  }

  function step(field, by) {
    const least = Number(field.min) || 0, most = Number(field.max) || 99;
    field.value = Math.min(Math.max((Math.trunc(Number(field.value)) || 0) + by, least), most);
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }

  for (const button of form.querySelectorAll("[data-step]")) {
    button.hidden = false;
    button.addEventListener("click", () => step(button.parentElement.querySelector("input"), Number(button.dataset.step)));
  }
  form.querySelector("[name='step'][value='one more']").addEventListener("click", async (event) => {
    event.preventDefault();
    step(count, 1);
  });
  count.addEventListener("change", layOut);

  if (wanted() > blocks().length) location.replace(`?reels=${wanted()}`);

  /* A name that was kept in this browser was not typed just now, so nobody has looked for it yet. */
  const who = document.getElementById("id_who");
  if (who.value && !form.querySelector("[name='customer']")) addEventListener("load", () => htmx.trigger(who, "restored"));
})();
