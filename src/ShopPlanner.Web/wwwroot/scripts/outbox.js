// What was marked or entered at the bench and is not at the shop's computer yet, in order. It lies in this browser's
// database, so that it outlives the page, the browser and the tablet's battery; where the database cannot be used it lies
// in the page alone. Every command has an id, a sender and a number that rises: the server does each once, and of two about
// one thing the later one holds.
import { openDB } from "/assets/scripts/idb/idb.js";
import { newId } from "./ids.js";

const name = "shop-planner bench", strict = { durability: "strict" };

export class Outbox {
  // Each a command; with "say" it was refused and waits for a person.
  waiting = [];
  // Why this browser keeps nothing; empty where it does.
  trouble = "";
  changed = () => {};
  #db;
  #tail = Promise.resolve();
  // Of commands that this browser could not keep: they come and go with the page, so they are counted by themselves.
  #page = newId();
  #pageNumber = 0;
  #others;

  open() {
    this.#tail = this.#open();
    return this.#tail;
  }

  async #open() {
    try {
      this.#db = await openDB(name, 1, {
        upgrade: db => {
          db.createObjectStore("commands", { keyPath: "number" });
          db.createObjectStore("facts");
        },
        terminated: () => { this.#db = undefined; },
      });
      await this.#begin();
    } catch (problem) {
      this.#fail(problem);
    }
    if ("BroadcastChannel" in self) {
      this.#others = new BroadcastChannel(name);
      this.#others.onmessage = () => this.#reload();
    }
  }

  async #begin() {
    const kept = this.#db.transaction(["commands", "facts"], "readwrite", strict), facts = kept.objectStore("facts");
    this.sender = await facts.get("sender") ?? newId();
    facts.put(this.sender, "sender");
    this.waiting = [...await kept.objectStore("commands").getAll(), ...this.waiting];
    await kept.done;
  }

  // Drawn by the caller at once; the promise ends when it is kept, or cannot be.
  add(command) {
    const one = { id: newId(), ...command, at: Date.now() };
    this.waiting.push(one);
    this.#tail = this.#tail.then(() => this.#keep(one));
    return this.#tail;
  }

  async #keep(one) {
    try {
      if (!this.#db) throw new Error(this.trouble || "the browser's database is closed");
      const kept = this.#db.transaction(["commands", "facts"], "readwrite", strict), facts = kept.objectStore("facts");
      const number = (await facts.get("number") ?? 0) + 1;
      Object.assign(one, { number, sender: this.sender });
      facts.put(number, "number");
      kept.objectStore("commands").add(one);
      await kept.done;
      this.trouble = "";
      this.#tell();
    } catch (problem) {
      Object.assign(one, { number: ++this.#pageNumber, sender: this.#page, isOnlyHere: true });
      this.#fail(problem);
    }
    this.changed();
  }

  // Those at the front that go together: one sender's, in order.
  next(most) {
    const ready = this.waiting.filter(one => one.number && !one.say), first = ready[0]?.sender;
    const end = ready.findIndex(one => one.sender !== first);
    return ready.slice(0, end < 0 ? most : Math.min(most, end));
  }

  remove(ids) {
    return this.#change(one => ids.includes(one.id), null);
  }

  // Kept, shown, and sent again only when somebody says so.
  refuse(id, say) {
    return this.#change(one => one.id === id, one => { one.say = say; });
  }

  again(id) {
    return this.#change(one => one.id === id, one => { delete one.say; });
  }

  async #change(which, act) {
    const chosen = this.waiting.filter(which);
    if (act) chosen.forEach(act);
    else this.waiting = this.waiting.filter(one => !which(one));
    this.changed();
    const kept = chosen.filter(one => !one.isOnlyHere);
    if (!this.#db || kept.length === 0) return;
    try {
      const change = this.#db.transaction("commands", "readwrite", strict);
      for (const one of kept) if (act) change.store.put(one); else change.store.delete(one.number);
      await change.done;
      this.#tell();
    } catch (problem) {
      // Sent again after the next start: the server does nothing twice.
      console.warn("The bench's outbox was not brought up to date:", problem);
    }
  }

  // What the server said last, for a page that is opened without a network.
  async remember(key, value) {
    try {
      await this.#db?.put("facts", value, key);
    } catch (problem) {
      console.warn("How the plan stood last is not kept:", problem);
    }
  }

  async recall(key) {
    try {
      return await this.#db?.get("facts", key);
    } catch (problem) {
      console.warn("How the plan stood last cannot be read:", problem);
      return undefined;
    }
  }

  // Another tab of this browser has added or sent something.
  async #reload() {
    await this.#tail;
    if (!this.#db) return;
    const kept = await this.#db.getAll("commands"), known = new Set(kept.map(one => one.id));
    this.waiting = [...kept, ...this.waiting.filter(one => (one.isOnlyHere || !one.number) && !known.has(one.id))];
    this.changed();
  }

  #tell() {
    this.#others?.postMessage("changed");
  }

  #fail(problem) {
    this.trouble = problem.name === "QuotaExceededError" ? "its storage is full"
      : "its browser keeps nothing, as in a private window";
    console.warn("This browser does not keep what is marked:", problem);
  }
}
