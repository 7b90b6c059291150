/* Records sound right into a file field: <input type="file" data-records="60">, 60 the most seconds.

   data-counts-down="3" says how many seconds pass before it listens. What was recorded can be heard, is put into the
   field by the person, and then goes the way of any chosen file; nothing leaves the browser before that. The microphone
   is open from the press on the button until it stops, and asked to mend nothing: an echo canceller or a noise gate
   would take away the very ticks. Where the browser lets no page listen, a sentence says so and the field stays. */
"use strict";
(() => {
  const LEAST_DB = -60, CLIPPED = 0.985, QUIET_DB = -40, STROKES = 40 /* a second */, FIRST_SPAN = 8 /* s */;
  const WAYS = ["audio/webm;codecs=opus", "audio/mp4", "audio/ogg;codecs=opus", "audio/webm"];
  const BY_FILE = "Or record with the phone’s own recorder and choose the file above.";
  const REFUSED = {
    NotAllowedError: "The microphone was refused to this page. Allow it for this address in the browser’s settings, then press again. " + BY_FILE,
    NotFoundError: "No microphone was found on this device. Plug one in, then press again. " + BY_FILE,
    NotReadableError: "The microphone is held by another program. Close that, then press again. " + BY_FILE,
  };
  const SHUT = "To record right here the browser asks for an encrypted address, and this one is not. python3 run.py --share gives the phone one. "
    + "Until then record with the phone’s own recorder and choose the file above.";

  const SVG = "http://www.w3.org/2000/svg";
  const make = (tag, told = {}, ...inside) => { const made = Object.assign(document.createElement(tag), told); made.append(...inside); return made; };
  const drawn = (tag, told) => { const made = document.createElementNS(SVG, tag); for (const [name, value] of Object.entries(told)) made.setAttribute(name, value); return made; };
  const button = (words, press, ink = false) => { const made = make("button", { type: "button", className: ink ? "ink-button" : "plain-button", textContent: words }); made.addEventListener("click", press); return made; };
  const decibels = (peak) => Math.max(LEAST_DB, 20 * Math.log10(Math.max(peak, 1e-6)));
  const signed = (db) => `${db < 0 ? "−" : ""}${Math.abs(Math.round(db))} dB`;

  /* The scale: hairlines every 10 dB up to the loudest the microphone can tell, a mark for now and one for the last second. */
  function scale() {
    const at = (db) => 600 * (1 - db / LEAST_DB), box = drawn("svg", { viewBox: "0 0 600 40", preserveAspectRatio: "none", class: "level", role: "meter", "aria-label": "How loud it is", "aria-valuemin": LEAST_DB, "aria-valuemax": 0, "aria-valuenow": LEAST_DB });
    let rules = "M0 39.5H600";
    for (let db = LEAST_DB; db <= 0; db += 10) rules += `M${Math.min(599.5, Math.max(0.5, at(db)))} 39.5v${db % 20 ? -8 : -16}`;
    const now = drawn("path", { class: "now" }), held = drawn("path", { class: "held" });
    box.append(drawn("path", { d: rules, class: "rule" }), drawn("path", { d: `M${at(-30)} 36.5H${at(-6)}`, class: "good" }), held, now);
    let highest = LEAST_DB, since = 0;
    const marks = make("p", { className: "level-marks small soft", ariaHidden: "true" }, ...["−60 dB", "−40 dB", "−20 dB", "0 dB"].map((words) => make("span", { textContent: words })));
    return { parts: [box, marks], show(db) {
      if (db > highest || performance.now() - since > 1000) { highest = db; since = performance.now(); }
      now.setAttribute("d", `M0 30H${at(db).toFixed(1)}`);
      held.setAttribute("d", `M${at(highest).toFixed(1)} 10V39`);
      box.setAttribute("aria-valuenow", Math.round(db));
      box.setAttribute("aria-valuetext", `${signed(db)}, where 0 dB is the loudest it can tell`);
    } };
  }

  /* The strip: the recording so far across the column, each tick a stroke; it draws closer together as it fills. */
  function strip(most) {
    const box = drawn("svg", { preserveAspectRatio: "none", class: "heard", "aria-hidden": "true" }), line = drawn("path", { class: "strokes" }), ground = drawn("path", { class: "rule" });
    box.append(ground, line);
    const highs = [];
    let span = 0;
    const reach = (seconds) => {
      while (span < Math.min(seconds, most)) span = span ? Math.min(2 * span, most) : Math.min(FIRST_SPAN, most);
      box.setAttribute("viewBox", `0 0 ${Math.ceil(span * STROKES)} 40`);
      ground.setAttribute("d", `M0 39.5H${Math.ceil(span * STROKES)}`);
    };
    reach(1);
    return { box, add(seconds, peak) {
      const place = Math.floor(seconds * STROKES);
      if (peak <= (highs[place] || 0)) return;
      highs[place] = peak;
      if (seconds > span) reach(seconds);
      let strokes = "";
      highs.forEach((high, k) => { strokes += `M${k + 0.5} 39.5V${(39.5 - 39 * Math.min(1, high)).toFixed(1)}`; });
      line.setAttribute("d", strokes);
    } };
  }

  class Ear {
    constructor(field) {
      this.field = field;
      this.most = Number(field.dataset.records) || 60;
      this.room = make("div", { className: "recorder", role: "group", ariaLabel: "Record it here" });
      (field.closest(".field") || field).after(this.room);
      if (!window.isSecureContext || !navigator.mediaDevices?.getUserMedia || !window.MediaRecorder) this.show(this.words(SHUT));
      else this.rest();
    }
    get counts() { return Number(this.field.dataset.countsDown ?? 3); }
    show(...parts) { this.room.replaceChildren(...parts); }
    words(text, more = "hint") { return make("p", { className: more, textContent: text }); }
    rest(...above) {
      const hint = this.words(`It counts ${this.counts} s down, then listens for up to ${this.most} s. You can hear it before it is used; until then it stays in this browser.`);
      this.start = button("Record it here", () => this.open());
      this.show(...above, this.start, hint);
    }

    async open() {
      this.show(this.words("The browser asks whether this page may listen."));
      try {
        this.stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 } });
        this.context = new AudioContext();
        await this.context.resume();
        this.listener = this.context.createAnalyser();
        this.listener.fftSize = 2048;
        this.context.createMediaStreamSource(this.stream).connect(this.listener);
      } catch (fault) { this.refused(fault); return; }
      this.countDown();
    }
    refused(fault) {
      this.close();
      const line = this.words(REFUSED[fault.name] || `The browser does not let this page listen (${fault.message || fault.name}). ${BY_FILE}`, "field-error");
      line.setAttribute("role", "alert");
      this.rest(line);
    }
    close() {
      clearTimeout(this.waiting);
      cancelAnimationFrame(this.frame);
      this.stream?.getTracks().forEach((track) => track.stop());
      if (this.context && this.context.state !== "closed") this.context.close();
    }

    countDown() {
      const scaled = scale(), said = make("p", { className: "countdown", role: "timer", ariaLive: "assertive" });
      this.show(said, ...scaled.parts, button("Not now", () => { this.close(); this.rest(); }));
      this.watch((peak) => scaled.show(decibels(peak)));
      const count = (left) => {
        if (left <= 0) { this.listen(said, scaled); return; }
        said.textContent = `Listens in ${left} s`;
        this.waiting = setTimeout(count, 1000, left - 1);
      };
      count(this.counts);
    }
    watch(told) {
      const samples = new Float32Array(this.listener.fftSize);
      const look = () => {
        if (!this.room.isConnected) { this.drop(); return; }
        this.listener.getFloatTimeDomainData(samples);
        told(samples.reduce((high, one) => Math.max(high, Math.abs(one)), 0));
        this.frame = requestAnimationFrame(look);
      };
      cancelAnimationFrame(this.frame);
      look();
    }

    listen(said, scaled) {
      const type = WAYS.find((way) => MediaRecorder.isTypeSupported(way)), pieces = [], heard = strip(this.most), began = performance.now();
      this.recorder = new MediaRecorder(this.stream, { ...(type ? { mimeType: type } : {}), audioBitsPerSecond: 192000 });
      this.recorder.addEventListener("dataavailable", (event) => { if (event.data.size) pieces.push(event.data); });
      this.recorder.addEventListener("stop", () => this.heard(pieces, type || this.recorder.mimeType), { once: true });
      this.highest = 0;
      this.ended = "";
      const stop = button("Stop", () => this.stop(""), true);
      this.show(said, ...scaled.parts, heard.box, stop);
      stop.focus();
      said.ariaLive = "off"; // a second hand that is read out would be recorded
      this.stream.getTracks()[0].addEventListener("ended", () => this.stop("The microphone was taken away; what it heard until then is kept."));
      this.recorder.start(1000);
      this.waiting = setTimeout(() => this.stop(`It stopped by itself after ${this.most} s.`), 1000 * this.most);
      this.watch((peak) => {
        const seconds = (performance.now() - began) / 1000;
        this.highest = Math.max(this.highest, peak);
        scaled.show(decibels(peak));
        heard.add(seconds, peak);
        const loud = this.highest >= CLIPPED ? ". Too loud: hold it further off" : seconds > 2 && decibels(this.highest) < QUIET_DB ? ". Very quiet: hold it closer" : "";
        said.textContent = `It listens, ${Math.max(0, Math.ceil(this.most - seconds))} s left${loud}`;
      });
      this.strip = heard.box;
    }
    stop(why) {
      if (this.recorder?.state !== "recording") return;
      this.ended = why;
      this.recorder.stop();
    }
    drop() { if (this.recorder?.state === "recording") this.recorder.stop(); this.close(); }

    heard(pieces, type) {
      this.close();
      if (!this.room.isConnected) return;
      const bare = type.split(";")[0], data = new Blob(pieces, { type: bare });
      if (!data.size) { this.rest(this.words("Nothing was recorded. Try again. " + BY_FILE, "field-error")); return; }
      const ending = { "audio/mp4": "m4a", "audio/ogg": "ogg" }[bare] || "webm", now = new Date();
      const name = `recorded ${now.toLocaleDateString("sv-SE")} ${now.toLocaleTimeString("sv-SE").replaceAll(":", ".")}.${ending}`;
      const address = URL.createObjectURL(data), sound = make("audio", { controls: true, src: address, ariaLabel: "What was recorded" });
      const loudness = this.highest >= CLIPPED ? " It is clipped: too loud for the microphone. Better again, further off."
        : ` The loudest of it is ${signed(decibels(this.highest))}${decibels(this.highest) < QUIET_DB ? ", which is very quiet: better again, closer" : ""}.`;
      const use = button("Use this recording", () => { URL.revokeObjectURL(address); this.give(new File([data], name, { type: bare })); }, true);
      const again = button("Record it again", () => { URL.revokeObjectURL(address); this.open(); });
      const said = this.words(`Recorded.${this.ended ? " " + this.ended : ""}${loudness} Hear it, then use it or record it again.`, "");
      said.setAttribute("role", "status");
      this.show(said, this.strip, sound, make("p", { className: "buttons" }, use, again));
      use.focus();
    }
    give(file) {
      const carried = new DataTransfer();
      carried.items.add(file);
      this.field.files = carried.files;
      this.rest(this.words(`${file.name} is in the field above.`));
      this.field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  }

  const ears = new Set();
  function prick() {
    for (const ear of ears) if (!ear.room.isConnected) { ear.drop(); ears.delete(ear); }
    for (const field of document.querySelectorAll("input[type=file][data-records]:not([data-ear])")) { field.dataset.ear = "yes"; ears.add(new Ear(field)); }
  }
  addEventListener("pagehide", () => ears.forEach((ear) => ear.drop()));
  document.addEventListener("htmx:afterSettle", prick);
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", prick); else prick();
})();
