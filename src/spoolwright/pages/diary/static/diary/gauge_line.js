/* Takes a pull from a gauge on a line into a file field: <input type="file" data-gauge="ADDRESS">.

   The shop's computer listens to its port and sends each number on; they are shown large, kept here, and made into a file
   at Stop, which then goes the way of any chosen file. A line that breaks leaves what came until then. */
"use strict";
(() => {
  const make = (tag, told = {}, ...inside) => { const made = Object.assign(document.createElement(tag), told); made.append(...inside); return made; };
  const button = (words, press, ink = false) => { const made = make("button", { type: "button", className: ink ? "ink-button" : "plain-button", textContent: words }); made.addEventListener("click", press); return made; };
  const SVG = "http://www.w3.org/2000/svg", FEWEST = 20;
  let labels = 0;

  class Line {
    constructor(field) {
      this.field = field;
      this.room = make("div", { className: "recorder gauge-line", role: "group", ariaLabel: "Take it from a gauge on a line" });
      (field.closest(".field") || field).after(this.room);
      this.rest();
    }
    show(...parts) { this.room.replaceChildren(...parts); }
    words(text, more = "hint") { const line = make("p", { className: more, textContent: text }); if (more === "field-error") line.setAttribute("role", "alert"); return line; }
    rest(...above) { this.show(...above, button("Take it from a gauge on a line", () => this.ask())); }
    labelled(words, control) { control.id = `gauge-line-${++labels}`; return make("div", { className: "field" }, make("label", { htmlFor: control.id, textContent: words }), control); }

    async ask(...above) {
      let told;
      try { told = await (await fetch(this.field.dataset.gauge, { headers: { Accept: "application/json" } })).json(); } catch { this.rest(this.words("The house does not answer. Try again.", "field-error")); return; }
      if (!told.ports.length) { this.rest(this.words(told.none)); return; }
      this.port = make("select", {}, ...told.ports.map((name) => make("option", { value: name, textContent: name })));
      this.like = make("textarea", { rows: 4, value: this.like?.value ?? told.like, spellcheck: false });
      this.show(...above, this.labelled("The port", this.port), this.labelled("How the gauge talks", this.like),
        this.words(`As its handbook says, a line each; docs/gauges.md names them all. It listens for up to ${told.most} s.`),
        make("p", { className: "buttons" }, button("Listen", () => this.listen(), true), button("Not now", () => this.rest())));
    }

    async listen() {
      const sent = new FormData();
      sent.append("port", this.port.value);
      sent.append("like", this.like.value);
      this.rows = [];
      this.highest = null;
      this.stopping = new AbortController();
      let answer;
      try {
        answer = await fetch(this.field.dataset.gauge, { method: "POST", body: sent, signal: this.stopping.signal, headers: { "X-CSRFToken": this.field.form.elements.csrfmiddlewaretoken.value } });
      } catch { this.rest(this.words("The house does not answer. Try again.", "field-error")); return; }
      if (!answer.ok) {
        const told = await answer.json().catch(() => ({ end: "The house did not take it. Try again." }));
        this.ask(this.words(told.end, "field-error"));
        return;
      }
      this.open();
      let ended = "";
      try { ended = await this.follow(answer.body.getReader()); } catch { ended = this.stopping.signal.aborted ? "" : "The line to the house broke; what came until then is kept here."; }
      this.close(ended);
    }
    open() {
      this.now = make("p", { className: "countdown", textContent: "It listens" });
      this.said = this.words("Pull slowly; press Stop when the line is let go.");
      this.said.setAttribute("role", "status");
      const stop = button("Stop, and draw it", () => this.stopping.abort(), true);
      this.strip = document.createElementNS(SVG, "svg");
      this.strip.setAttribute("class", "heard");
      this.strip.setAttribute("preserveAspectRatio", "none");
      this.strip.setAttribute("viewBox", "0 0 100 40");
      this.strip.setAttribute("aria-hidden", "true");
      this.trace = document.createElementNS(SVG, "path");
      this.trace.setAttribute("class", "strokes");
      this.strip.append(this.trace);
      this.show(this.now, this.said, this.strip, stop);
      stop.focus();
    }
    async follow(reader) {
      const decoder = new TextDecoder();
      let waiting = "", ended = "";
      for (;;) {
        const { done, value } = await reader.read();
        if (done) return ended;
        if (!this.room.isConnected) { this.stopping.abort(); return ""; }
        const lines = (waiting + decoder.decode(value, { stream: true })).split("\n");
        waiting = lines.pop();
        for (const told of lines.filter(Boolean).map((line) => JSON.parse(line))) {
          if ("n" in told) this.rows.push(told);
          else if (told.wait) this.said.textContent = told.wait;
          if ("end" in told) ended = told.end;
        }
        this.draw();
      }
    }
    draw() {
      const last = this.rows.at(-1);
      if (!last) return;
      const top = this.rows.reduce((high, row) => row.n > high.n ? row : high), wide = Math.max(10, last.t), every = Math.ceil(this.rows.length / 800);
      this.now.textContent = last.s;
      this.said.textContent = `The highest so far ${top.s}; ${this.rows.length} numbers in ${last.t.toFixed(1)} s.`;
      this.trace.setAttribute("d", "M" + this.rows.filter((row, k) => k % every === 0).map((row) => `${(100 * row.t / wide).toFixed(2)} ${(39 - 37 * Math.max(0, row.n) / Math.max(top.n, 0.1)).toFixed(2)}`).join("L"));
    }
    close(ended) {
      if (!this.room.isConnected) return;
      const said = ended ? [this.words(ended, "field-error")] : [];
      if (this.rows.length < FEWEST) { this.ask(...said, this.words(`${this.rows.length} numbers came; a pull needs ${FEWEST} or more. Listen again, or type them as the pull goes.`, "field-error")); return; }
      const rows = this.rows.map((row) => `${row.t},${row.n}\n`).join(""), now = new Date();
      const name = `from the gauge ${now.toLocaleDateString("sv-SE")} ${now.toLocaleTimeString("sv-SE").replaceAll(":", ".")}.csv`;
      const carried = new DataTransfer();
      carried.items.add(new File([`time_s,force_n\n${rows}`], name, { type: "text/csv" }));
      this.field.files = carried.files;
      this.rest(...said, this.words(`${name} is in the field above.`));
      this.field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  }

  function lay() {
    for (const field of document.querySelectorAll("input[type=file][data-gauge]:not([data-line])")) { field.dataset.line = "yes"; new Line(field); }
  }
  document.addEventListener("htmx:afterSettle", lay);
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", lay); else lay();
})();
