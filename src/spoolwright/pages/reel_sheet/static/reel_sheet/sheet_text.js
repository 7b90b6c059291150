/* A file that is let fall comes into the text field; what had been typed there is put aside, not lost.
   A fault's line is found in the text by touching its number. */
"use strict";
(() => {
  const MOST = 800000;
  const field = document.getElementById("id_toml"), file = document.getElementById("id_file"), aside = document.getElementById("put-aside");
  if (!field || !file) return;

  function say(words) {
    const line = document.querySelector("[data-file-said]") || Object.assign(document.createElement("p"), { className: "small" });
    line.dataset.fileSaid = "";
    line.setAttribute("role", "status");
    line.textContent = words;
    file.closest(".field").append(line);
  }

  file.addEventListener("change", async () => {
    const chosen = file.files[0];
    if (!chosen || chosen.size > MOST) return; // the house itself says what is wrong with such a file
    let text;
    try { text = new TextDecoder("utf-8", { fatal: true }).decode(await chosen.arrayBuffer()); } catch { return; }
    text = text.replaceAll("\r\n", "\n");
    if (field.value.trim() && field.value !== field.defaultValue && field.value !== text) {
      document.getElementById("typed-before").value = field.value;
      aside.hidden = false;
    }
    field.value = text;
    file.value = "";
    field.dispatchEvent(new Event("input", { bubbles: true }));
    say(`The text of “${chosen.name}” stands in the field below. Look it through.`);
  });

  document.addEventListener("click", (event) => {
    const link = event.target.closest?.("a[data-line]");
    if (!link) return;
    event.preventDefault();
    const lines = field.value.split("\n"), at = Math.min(Number(link.dataset.line), lines.length) - 1;
    const start = lines.slice(0, at).reduce((sum, line) => sum + line.length + 1, 0);
    field.focus();
    field.setSelectionRange(start, start + lines[at].length);
    field.scrollTop = Math.max(0, (at - 4) * parseFloat(getComputedStyle(field).lineHeight));
    field.scrollIntoView({ block: "nearest" });
  });
})();
