/* What a file brings is shown at once; too large a file is said before it is sent; a touched part goes into the
   form; the chosen row of the fault table is said beside its field. Everything works without this script, in more steps. */
"use strict";
(() => {
  const MEGABYTE = 1024 * 1024, LARGEST = 192;
  document.documentElement.classList.add("hearing");

  function complain(field, words) {
    quiet(field);
    const line = Object.assign(document.createElement("div"), { className: "field-error", id: field.id + "_error" });
    line.setAttribute("role", "alert");
    line.append(Object.assign(document.createElement("p"), { textContent: words }));
    field.after(line);
    field.setAttribute("aria-invalid", "true");
  }
  const quiet = (field) => {
    document.getElementById(field.id + "_error")?.remove();
    field.parentElement.querySelector(".being-read")?.remove();
    field.removeAttribute("aria-invalid");
  };

  /* The files go along with everything that was typed, so that the answer can put all of it back. */
  document.addEventListener("change", (event) => {
    const field = event.target;
    if (!field.matches?.("input[type=file][data-sends]") || !field.files.length) return;
    const large = [...field.files].find((file) => file.size > LARGEST * MEGABYTE);
    if (large) {
      complain(field, `${large.name} has ${Math.round(large.size / MEGABYTE)} MB; a file may have up to ${LARGEST} MB. Nothing was sent, and what was typed stays.`);
      field.value = "";
      return;
    }
    quiet(field);
    const reading = Object.assign(document.createElement("p"), { className: "hint being-read", textContent: "It is being read." });
    reading.setAttribute("role", "status");
    field.after(reading);
    const form = field.form, target = form.getAttribute("hx-target");
    htmx.ajax("POST", form.getAttribute("hx-post"), { source: form, target, swap: "outerHTML", values: { do: field.dataset.sends } });
  });

  /* Refused before it was read: the message goes beside the file field, and the form stays as it is. */
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.xhr.status !== 413) return;
    event.detail.shouldSwap = false;
    const form = event.detail.requestConfig.elt.closest("form");
    const field = [...(form?.querySelectorAll("input[type=file]") || [])].find((one) => one.files.length);
    if (field) { complain(field, new DOMParser().parseFromString(event.detail.xhr.responseText, "text/html").body.textContent.trim()); field.value = ""; }
  });

  document.addEventListener("click", (event) => {
    const part = event.target.closest?.(".drawing-to-touch a[data-part]"), form = part?.closest("form");
    if (!form) return;
    event.preventDefault();
    form.elements.part.value = part.querySelector("title")?.textContent || part.getAttribute("aria-label") || part.dataset.part;
    form.elements.touched.value = part.dataset.part;
    form.elements.part.dispatchEvent(new Event("input", { bubbles: true }));
    form.elements.part.focus();
  });

  const say = (field) => {
    const place = field.form?.querySelector(".fault-chosen");
    const row = field.value && field.form.querySelector(`dt[data-fault="${field.value}"]`);
    if (place) place.textContent = row ? row.nextElementSibling.textContent : "";
  };
  document.addEventListener("change", (event) => { if (event.target.matches?.("select[name=fault]")) say(event.target); });
})();
