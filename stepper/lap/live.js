// The connection to the sitting: what is shown comes in, touches go out, each with a number that is used once.
//
// One touch is on its way at a time. If the connection breaks before it is answered, it is sent again under the
// same number; the sitting then takes it, or says what became of it. It is never sent under another number.

const ANSWER_MS = 3000;      // without an answer for so long, the connection counts as lost
const BEAT_MS = 10000;       // how often to look whether the sitting is still there, while the page is seen
const WAITS_MS = [200, 400, 800, 1600, 3000, 5000];
const KEPT = "touch";        // where the touch on its way is kept, so that a page opened anew can ask about it

function makeName() {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), each => each.toString(16).padStart(2, "0")).join("");
}

export class Live {
  /** @param {{sight: Function, state: Function, outcome: Function, would: Function, over: Function}} told */
  constructor(told) {
    this.told = told;
    this.device = makeName();
    this.number = 0;
    this.room = 0;
    this.socket = null;
    this.open = false;
    this.over = false;
    this.failures = 0;
    this.touch = this.recall();
    this.timers = {};
    addEventListener("online", () => this.hurry());
    addEventListener("offline", () => this.lose());
    document.addEventListener("visibilitychange", () => { if (!document.hidden) this.hurry(); });
    setInterval(() => { if (!document.hidden) this.beat(); }, BEAT_MS);
    this.connect();
  }

  recall() {
    try { return JSON.parse(sessionStorage.getItem(KEPT)); } catch { return null; }
  }

  keep() {
    if (this.touch) sessionStorage.setItem(KEPT, JSON.stringify(this.touch));
    else sessionStorage.removeItem(KEPT);
    this.told.state();
  }

  get pending() { return this.touch !== null; }

  connect() {
    clearTimeout(this.timers.again);
    if (this.over || this.socket) return;
    const at = new URL(`live?device=${this.device}&room=${this.room}`, location.href);
    at.protocol = "ws:";
    const socket = this.socket = new WebSocket(at);
    this.timers.opening = setTimeout(() => this.lose(), ANSWER_MS);
    socket.onopen = () => {
      if (socket !== this.socket) return;
      clearTimeout(this.timers.opening);
      this.open = true;
      this.failures = 0;
      this.told.state();
      if (this.touch) this.transmit(true);
    };
    socket.onmessage = message => { if (socket === this.socket) this.hear(JSON.parse(message.data)); };
    socket.onclose = () => { if (socket === this.socket) this.lose(); };
  }

  /** Take the connection for lost, and try again. */
  lose() {
    for (const each of ["opening", "answer", "beat"]) clearTimeout(this.timers[each]);
    const socket = this.socket;
    this.socket = null;
    this.open = false;
    if (socket) { socket.onclose = null; socket.close(); }
    if (this.over) return;
    this.told.state();
    clearTimeout(this.timers.again);
    this.timers.again = setTimeout(() => this.connect(), WAITS_MS[Math.min(this.failures++, WAITS_MS.length - 1)]);
  }

  /** Something may have changed: look at once. */
  hurry() {
    this.failures = 0;
    if (this.open) this.beat();
    else { this.lose(); this.connect(); }
  }

  beat() {
    if (!this.open) return;
    this.send({ beat: true });
    clearTimeout(this.timers.beat);
    this.timers.beat = setTimeout(() => this.lose(), ANSWER_MS);
  }

  send(message) {
    if (this.open) this.socket.send(JSON.stringify(message));
  }

  /** Say how many squares there is room for. */
  fit(room) {
    if (room === this.room) return;
    this.room = room;
    this.send({ room });
  }

  foresee(number) { this.send({ would: number }); }

  /** Ask for something; false if it cannot be asked now. */
  ask(ask, sight, more = {}) {
    if (!this.open || this.pending || this.over || !sight) return false;
    this.number += 1;
    this.touch = { device: this.device, number: this.number, ask, seen: sight.seq, place: sight.place, made: Date.now(), ...more };
    this.keep();
    this.transmit(false);
    return true;
  }

  transmit(again) {
    const { made, ...touch } = this.touch;
    this.send({ ...touch, again, age: Math.max(0, (Date.now() - made) / 1000) });
    clearTimeout(this.timers.answer);
    this.timers.answer = setTimeout(() => this.lose(), ANSWER_MS);
  }

  hear(message) {
    if ("beat" in message) clearTimeout(this.timers.beat);
    else if ("sight" in message) this.told.sight(message.sight);
    else if ("would" in message) this.told.would(message.would);
    else if ("touch" in message || "malformed" in message) this.answered(message);
    else if ("over" in message || "full" in message) {
      this.over = "over" in message;
      if (this.over) { this.touch = null; this.keep(); }
      this.told.over(message.over || message.full, this.over);
    }
  }

  answered(message) {
    const touch = this.touch;
    if (!touch) return;
    const mine = message.touch === touch.number && message.device === touch.device;
    if (!mine && !message.malformed) return;
    clearTimeout(this.timers.answer);
    this.touch = null;
    this.keep();
    this.told.outcome(touch, message.outcome || "passed");
  }
}
