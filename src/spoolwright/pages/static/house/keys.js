/* One key to find, one to see the keys. A page adds its own with data-key="w" and data-key-says="to the open block":
   a link or button is pressed, a field takes the focus, a details opens or shuts. Keys are not heard while
   somebody types, and can be switched off for this browser (a single key can be struck by mistake). */
"use strict";
(() => {
  const OFF = "keys:off";
  const off = () => { try { return localStorage.getItem(OFF) === "yes"; } catch { return false; } };
  const typing = (where) => where.closest("input, textarea, select, [contenteditable]");
  const holders = () => [...document.querySelectorAll("[data-key]")];

  function press(holder) {
    if (holder.matches("input, textarea, select")) { holder.focus(); holder.select?.(); }
    else if (holder.matches("details")) { holder.open = !holder.open; if (holder.open) holder.querySelector("summary").focus(); }
    else if (holder.matches("a, button")) holder.click();
    else { holder.setAttribute("tabindex", "-1"); holder.focus(); holder.scrollIntoView({ block: "start" }); }
  }

  function list(dialog) {
    const seen = new Set();
    const rows = holders().filter((holder) => !seen.has(holder.dataset.key) && seen.add(holder.dataset.key)).flatMap((holder) => {
      const term = document.createElement("dt"), says = document.createElement("dd");
      term.append(Object.assign(document.createElement("kbd"), { textContent: holder.dataset.key }));
      says.textContent = holder.dataset.keySays || holder.textContent.trim();
      return [term, says];
    });
    dialog.querySelector("dl").replaceChildren(...rows);
    dialog.querySelector("input").checked = off();
  }

  function show() {
    const dialog = document.getElementById("keys");
    if (!dialog || dialog.open) return;
    list(dialog);
    dialog.showModal();
  }

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat || off() || typing(event.target) || document.querySelector("dialog[open]")) return;
    if (event.key === "?") { event.preventDefault(); show(); return; }
    const same = holders().filter((holder) => holder.dataset.key === event.key);
    if (!same.length) return;
    event.preventDefault();
    if (same[0].matches("details")) same.forEach(press); else press(same[0]);
  });
  document.addEventListener("click", (event) => { if (event.target.closest("[data-show-keys]")) show(); });
  document.addEventListener("change", (event) => {
    if (!event.target.matches("#keys input")) return;
    try { if (event.target.checked) localStorage.setItem(OFF, "yes"); else localStorage.removeItem(OFF); } catch { /* stays as it was */ }
  });
})();
