/* Numbers of a scale typed by thumb while it is pulled: big keys above the rows of [data-live-pull].

   Each Enter writes a row, the seconds since the start and the number, into the text field, which is what is sent:
   without this script one types the rows there. Undo takes back the last press that changed the rows. */
"use strict";
(() => {
  const NUMBER = /^\d{1,5}([.,]\d{0,4})?$/, KEYS = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0"];
  const make = (tag, told = {}, ...inside) => { const made = Object.assign(document.createElement(tag), told); made.append(...inside); return made; };
  const key = (words, press, told = {}) => { const made = make("button", { type: "button", className: "plain-button", textContent: words, ...told }); made.addEventListener("click", press); return made; };

  class Pad {
    constructor(place) {
      this.rows = place.querySelector("textarea");
      this.form = this.rows.form;
      this.before = [];
      this.number = make("input", { type: "text", className: "live-number", inputMode: "none", autocomplete: "off", ariaLabel: "What the scale shows", maxLength: 10 });
      this.number.addEventListener("keydown", (event) => { if (event.key === "Enter") { event.preventDefault(); this.enter(); } });
      this.unit = make("span", { className: "live-unit" });
      this.clock = make("p", { className: "live-clock", role: "timer" });
      this.said = make("p", { className: "live-said", role: "status" });
      this.last = make("p", { className: "live-last" });
      this.go = key("Start", () => this.started ? this.stop() : this.start());
      this.undo = key("Undo the last", () => this.takeBack());
      const keys = KEYS.map((mark) => key(mark, () => this.press(mark), mark === "." ? { ariaLabel: "decimal point" } : {}));
      keys.push(key("rub out", () => { this.number.value = this.number.value.slice(0, -1); }, { className: "plain-button live-rub" }));
      const pad = make("div", { className: "live-pad", role: "group", ariaLabel: "The numbers, typed as the pull goes" },
        this.said, make("div", { className: "live-top" }, this.clock, this.last), make("div", { className: "live-shown" }, this.number, this.unit),
        make("div", { className: "live-keys" }, ...keys), key("Enter", () => this.enter(), { className: "ink-button live-enter" }), make("div", { className: "live-ways" }, this.go, this.undo));
      const field = this.rows.closest(".field"), fold = make("details", { className: "more live-rows" }, make("summary", { textContent: "The rows, as they are sent" }));
      place.prepend(pad);
      field.before(fold);
      fold.append(field);
      fold.open = field.querySelector(".field-error") !== null;
      this.form.elements.unit?.addEventListener("change", () => this.show());
      this.rows.addEventListener("input", () => this.show());
      this.tell(this.lines.length ? "Go on typing, or draw what there is." : "Start, pull slowly, and type what the scale shows: the highest as the line starts to run, then one a second while it runs.");
      this.show();
    }
    get lines() { return this.rows.value.split("\n").filter((line) => line.trim()); }
    get started() { return this.began !== undefined; }
    get seconds() { return (performance.now() - this.began) / 1000; }
    tell(words) { this.said.textContent = words; }

    show() {
      const unit = this.form.elements.unit?.value || "", lines = this.lines, [at, ...rest] = (lines.at(-1) || "").trim().split(/[\s;]+/);
      this.unit.textContent = unit;
      this.last.textContent = lines.length ? `${lines.length} ${lines.length === 1 ? "number" : "numbers"}, the last ${rest.join(" ")}${/[a-z]/i.test(rest.join("")) ? "" : " " + unit} at ${at} s` : "no number yet";
      this.go.textContent = this.started ? "Stop, and draw it" : lines.length ? "Go on" : "Start";
      this.undo.disabled = !lines.length && !this.before.length;
      if (!this.started) this.clock.textContent = "0.0 s";
    }
    start() {
      const last = Number.parseFloat((this.lines.at(-1) || "0").replace(",", "."));
      this.began = performance.now() - 1000 * (Number.isFinite(last) ? last : 0);
      const tick = () => {
        if (!this.started || !this.number.isConnected) return;
        this.clock.textContent = `${this.seconds.toFixed(1)} s`;
        setTimeout(tick, 100);
      };
      tick();
      this.tell("It counts. Type a number, then Enter.");
      this.number.focus();
      this.show();
    }
    stop() {
      this.began = undefined;
      this.show();
      if (this.lines.length) this.form.querySelector('button[name="do"][value="look"]')?.click();
      else this.tell("Stopped before a number was typed.");
    }
    press(mark) {
      if (this.number.value.length < this.number.maxLength) this.number.value += mark;
    }
    enter() {
      const typed = this.number.value.trim();
      if (!NUMBER.test(typed)) { this.tell(typed ? `“${typed}” is no number. Accepted: such as 3.35.` : "Nothing is typed yet. Accepted: such as 3.35."); return; }
      if (!this.started) this.start();
      this.change([...this.lines, `${this.seconds.toFixed(2)} ${typed}`].join("\n") + "\n");
      this.number.value = "";
      this.tell(`${typed} ${this.unit.textContent} is down.`);
      this.number.focus();
    }
    change(text, undoing = false) {
      if (!undoing) this.before.push(this.rows.value);
      this.rows.value = text;
      this.rows.dispatchEvent(new Event("input", { bubbles: true }));
    }
    takeBack() {
      const taken = this.lines.at(-1);
      this.change(this.before.pop() ?? this.lines.slice(0, -1).map((line) => line + "\n").join(""), true);
      if (taken) this.tell(`Taken back: ${taken.trim().split(/[\s;]+/).slice(1).join(" ")} ${this.unit.textContent}.`);
      this.number.focus();
    }
  }

  function lay() {
    for (const place of document.querySelectorAll("[data-live-pull]:not([data-laid])")) { place.dataset.laid = "yes"; new Pad(place); }
  }
  document.addEventListener("htmx:afterSettle", lay);
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", lay); else lay();
})();
