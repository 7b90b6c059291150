/* What was typed survives a lost connection and a reload.

   Every form with method="post" is kept, field by field as it is typed, in this browser only, under its page and
   its action, or under the name that data-keep gives it where it may stand on several pages; never passwords, files
   or hidden fields. data-keep="no" on a form says not to.
   A form is given up for written when the next page carries [data-written], or when htmx answers it with success.
   Before a form leaves, the house is asked whether it is there at all; when it is not, nothing is sent, the page
   stays as it is, chosen files included, and a sentence with a button says so. */
"use strict";
(() => {
  const TYPED = "typed:";
  const forms = () => [...document.querySelectorAll("form")].filter((form) => form.method === "post" && form.dataset.keep !== "no");
  const nameOf = (form) => TYPED + (form.dataset.keep || location.pathname + " " + (form.getAttribute("action") || "here"));
  const keeps = (field) => field.name && !field.readOnly && !["hidden", "password", "file", "submit", "button"].includes(field.type);
  const fieldsOf = (form) => [...form.elements].filter(keeps);
  const slots = (form) => {
    const seen = {};
    return fieldsOf(form).map((field) => [field.name + "#" + (seen[field.name] = (seen[field.name] ?? -1) + 1), field]);
  };
  const read = (field) => ["checkbox", "radio"].includes(field.type) ? field.checked
    : field.multiple ? [...field.selectedOptions].map((option) => option.value) : field.value;
  const store = { get: (key) => { try { return JSON.parse(localStorage.getItem(key)); } catch { return null; } },
    set: (key, value) => { try { localStorage.setItem(key, JSON.stringify(value)); } catch { /* a full or shut store: the page still works */ } },
    drop: (key) => { try { localStorage.removeItem(key); } catch { /* as above */ } } };

  function keep(form) {
    store.set(nameOf(form), { at: Date.now(), values: Object.fromEntries(slots(form).map(([slot, field]) => [slot, read(field)])) });
  }

  function put(field, value) {
    if (JSON.stringify(read(field)) === JSON.stringify(value)) return false;
    if (["checkbox", "radio"].includes(field.type)) field.checked = value === true;
    else if (field.multiple) for (const option of field.options) option.selected = value.includes(option.value);
    else field.value = value;
    return true;
  }

  function restore(form) {
    const kept = store.get(nameOf(form));
    if (!kept || form.querySelector(".fault-list")) return;
    const changed = slots(form).filter(([slot, field]) => slot in kept.values && put(field, kept.values[slot]));
    if (!changed.length) return;
    for (const [, field] of changed) field.dispatchEvent(new Event("change", { bubbles: true }));
    const hour = new Date(kept.at).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
    const day = new Date(kept.at).toDateString() === new Date().toDateString() ? "" : ` on ${new Date(kept.at).toLocaleDateString("en-GB", { day: "numeric", month: "long" })}`;
    say(form, `What was typed here at ${hour}${day} was kept and is back in its place.`, "Clear it", () => { store.drop(nameOf(form)); form.reset(); quiet(form); });
  }

  /* One sentence a form: above it when it speaks of all that was typed, beside the button when sending failed. */
  const spoken = new WeakMap();
  const quiet = (form) => { spoken.get(form)?.remove(); spoken.delete(form); };

  function say(form, words, offer, act, above = form) {
    quiet(form);
    const line = Object.assign(document.createElement("p"), { className: "kept-words" });
    line.setAttribute("role", "status");
    above.before(line);
    spoken.set(form, line);
    const button = Object.assign(document.createElement("button"), { type: "button", className: "plain-button", textContent: offer });
    button.addEventListener("click", act);
    line.append(words + " ", button);
    return button;
  }

  function unsent(form, again) {
    const above = form.querySelector(".buttons") || form;
    say(form, "Not sent: the house does not answer. Everything is kept here.", "Send it again", again, above).focus();
  }

  async function answers() {
    if (navigator.onLine === false) return false;
    try {
      const reply = await fetch(document.body.dataset.here, { method: "HEAD", cache: "no-store", signal: AbortSignal.timeout(6000) });
      return reply.ok;
    } catch { return false; }
  }

  /* A button that sends twice would write twice; the second press within the same sending is not heard. */
  async function leave(form, button) {
    if (form.dataset.leaving) return;
    form.dataset.leaving = "asking";
    const there = await answers();
    if (!there) { delete form.dataset.leaving; unsent(form, () => leave(form, button)); return; }
    quiet(form);
    form.dataset.leaving = "going";
    try { sessionStorage.setItem("sent", nameOf(form)); } catch { /* kept until cleared by hand */ }
    form.requestSubmit(button && button.form === form ? button : undefined);
  }

  function began() {
    let sent = null;
    try { sent = sessionStorage.getItem("sent"); sessionStorage.removeItem("sent"); } catch { /* nothing was noted */ }
    if (sent && document.querySelector("[data-written]")) store.drop(sent);
    forms().forEach(restore);
  }

  document.addEventListener("input", (event) => { const form = event.target.form; if (form && forms().includes(form) && keeps(event.target)) keep(form); });
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (event.defaultPrevented || !forms().includes(form)) return;
    if (form.dataset.leaving === "going") { form.dataset.leaving = "gone"; setTimeout(() => delete form.dataset.leaving, 8000); return; }
    event.preventDefault();
    leave(form, event.submitter);
  });
  addEventListener("pageshow", (event) => { if (event.persisted) for (const form of forms()) delete form.dataset.leaving; });
  document.addEventListener("htmx:afterRequest", (event) => {
    /* The form itself: what was written may have taken its place, and then nothing bubbles up from it. */
    const form = event.detail.requestConfig.elt.closest("form");
    if (form && event.detail.successful && event.detail.requestConfig.verb === "post" && event.detail.xhr.getResponseHeader("X-Written")) { store.drop(nameOf(form)); quiet(form); }
  });
  document.addEventListener("htmx:afterSettle", (event) => { for (const form of forms()) if (event.target.contains(form)) restore(form); });
  for (const lost of ["htmx:sendError", "htmx:timeout"]) document.addEventListener(lost, (event) => {
    const form = event.target.closest("form");
    const pressed = event.detail.requestConfig.triggeringEvent?.submitter;
    if (form) unsent(form, () => { quiet(form); if (pressed?.isConnected) pressed.click(); else htmx.trigger(event.target, event.detail.requestConfig.triggeringEvent?.type || "submit"); });
  });
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", began); else began();
})();
