// What a shopping list's page keeps on this device: ticks that are not sent yet, in order, each with the id of its command, and
// what the server said last. A tick sent twice is done once.
const prefix = "shop-planner shopping ";
const most = 50, patience = 15_000, quickest = 2_000, slowest = 30_000, look = 20_000;

export class Box {
  waiting = [];
  refused = {};
  isReached = true;
  trouble = "";
  heard = () => {};
  #underWay = new Set();
  #isAsking = false;
  #pause = quickest;
  #timer;

  constructor(address, state, draw) {
    Object.assign(this, { address, state, draw, key: prefix + address });
    this.#load();
  }

  begin() {
    addEventListener("online", () => this.send());
    addEventListener("pageshow", event => { if (event.persisted) this.send(); });
    document.addEventListener("visibilitychange", () => { if (!document.hidden) this.send(); });
    // Another tab of this browser shares the box.
    addEventListener("storage", event => {
      if (event.key !== this.key) return;
      this.#load();
      this.draw();
    });
    this.send();
  }

  // Drawn and kept, then sent: nothing waits for the network.
  add(ticks, of) {
    this.#change(() => {
      delete this.refused[of];
      for (const tick of ticks) if (!this.#undoes(tick)) this.waiting.push(tick);
    });
    this.draw();
    this.send();
  }

  // A tick that was not sent yet and is taken back need not be sent at all.
  #undoes(tick) {
    if (tick.kind !== "buy" && tick.kind !== "back") return false;
    const at = this.waiting.findLastIndex(one => one.stock === tick.stock && one.place === tick.place);
    if (at < 0 || this.#underWay.has(this.waiting[at].id) || this.waiting[at].kind === tick.kind) return false;
    this.waiting.splice(at, 1);
    return true;
  }

  async send() {
    if (this.#isAsking) return;
    clearTimeout(this.#timer);
    const ticks = this.waiting.slice(0, most);
    this.#isAsking = true;
    this.#underWay = new Set(ticks.map(tick => tick.id));
    const answer = await this.#ask(ticks);
    this.#underWay.clear();
    this.#isAsking = false;
    if (answer) this.#take(answer, ticks);
    this.draw();
    this.#pause = answer ? quickest : Math.min(slowest, this.#pause * 2);
    this.#timer = setTimeout(() => this.send(), this.#next(answer));
  }

  // At once where there is more to send, slower and slower while nobody answers; else other devices' ticks are looked for.
  #next(answer) {
    if (!answer || answer.answers.some(one => one.again)) return this.#pause;
    return this.waiting.length > 0 ? 0 : look;
  }

  async #ask(ticks) {
    try {
      const response = await fetch(this.address + "/ticks", {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify(ticks),
        signal: AbortSignal.timeout?.(patience),
      });
      this.isReached = true;
      this.trouble = response.ok ? "" : response.status === 404 ? "This list is gone. Open the project again."
        : `The shop's computer refused (${response.status}). Load this page again; what you checked off is kept.`;
      return response.ok ? await response.json() : null;
    } catch {
      // No network, or no answer in time: that is what the box is for.
      this.isReached = false;
      return null;
    }
  }

  #take(answer, sent) {
    this.#change(() => {
      for (const { id, ok, say, again } of answer.answers) {
        const tick = sent.find(one => one.id === id);
        if (say) this.refused[tick.of ?? tick.stock] = say;
        if (ok || !again) this.waiting = this.waiting.filter(one => one.id !== id);
      }
      this.state = answer.state;
    });
    this.heard(answer);
  }

  // What another tab of this browser kept meanwhile is not lost.
  #change(act) {
    this.#load();
    act();
    const { state, waiting, refused } = this;
    try {
      localStorage.setItem(this.key, JSON.stringify({ state, waiting, refused }));
    } catch (problem) {
      this.trouble = `This browser keeps nothing (${problem.name}). Leave the page open until it says Saved.`;
    }
  }

  #load() {
    let kept = null;
    try {
      kept = JSON.parse(localStorage.getItem(this.key) ?? "null");
    } catch (problem) {
      console.warn("What this browser kept of the list cannot be read:", problem);
    }
    if (!kept) return;
    [this.waiting, this.refused] = [kept.waiting ?? [], kept.refused ?? {}];
    if (kept.state?.at > this.state.at) this.state = kept.state;
  }
}
