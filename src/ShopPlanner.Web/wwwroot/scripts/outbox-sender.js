// Sends the bench's outbox, quietly and in order, one request at a time: after each mark, when the network or the page
// comes back, and slower and slower while nobody answers. An answer without the program's own mark is not from the program:
// the login page of a public network answers everything.
const mark = "Shop-Planner-Bench", address = "/bench/commands";
const most = 50, patience = 15_000, quickest = 1_000, slowest = 30_000, look = 20_000;

export class Sender {
  // Whether the last request was answered by the program; undefined until there was one.
  isReached;
  trouble = "";
  heard = () => {};
  told = () => {};
  #isAsking = false;
  #pause = quickest;
  #timer;
  #waits = [];

  // about: what the page shows, for the server to say how it stands.
  constructor(outbox, about) {
    Object.assign(this, { outbox, about });
  }

  begin() {
    addEventListener("online", () => this.soon());
    addEventListener("pageshow", event => { if (event.persisted) this.soon(); });
    document.addEventListener("visibilitychange", () => { if (!document.hidden) this.soon(); });
    this.send();
  }

  soon() {
    this.#pause = quickest;
    this.send();
  }

  // True once everything is at the server and the server has just answered; false where that takes too long.
  drained(milliseconds) {
    const done = new Promise(resolve => this.#waits.push(resolve));
    const late = new Promise(resolve => setTimeout(() => resolve(false), milliseconds));
    this.soon();
    return Promise.race([done, late]);
  }

  async send() {
    if (this.#isAsking) return;
    clearTimeout(this.#timer);
    this.#isAsking = true;
    const commands = this.outbox.next(most);
    const answer = await this.#ask(commands);
    this.#isAsking = false;
    let isAgain = false;
    if (answer) isAgain = await this.#take(answer);
    this.told();
    const isMore = this.outbox.next(1).length > 0;
    if (answer && !isMore) for (const done of this.#waits.splice(0)) done(true);
    this.#pause = answer && !isAgain ? quickest : Math.min(slowest, this.#pause * 2);
    this.#timer = setTimeout(() => this.send(), !answer || isAgain ? this.#pause : isMore ? 0 : look);
  }

  async #ask(commands) {
    try {
      const response = await fetch(address, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({
          sender: commands[0]?.sender ?? this.outbox.sender ?? "00000000-0000-4000-8000-000000000000",
          ...this.about,
          commands: commands.map(({ at, say, sender, isOnlyHere, ...command }) => command),
        }),
        signal: AbortSignal.timeout?.(patience),
      });
      const isOurs = response.headers.has(mark);
      this.isReached = isOurs;
      this.trouble = isOurs && response.ok ? ""
        : isOurs || [401, 403, 419].includes(response.status)
          ? `The shop's computer refused (${response.status}). Load this page again: what you marked is kept.`
          : response.status >= 500 ? "The shop's computer has a problem. What you marked is kept and sent again."
          : "Something else answers in place of the shop's computer: does this network ask for a login?";
      return isOurs && response.ok ? await response.json() : null;
    } catch {
      // No network, or no answer in time: that is what the outbox is for.
      this.isReached = false;
      this.trouble = "";
      return null;
    }
  }

  async #take(answer) {
    const done = answer.answers.filter(one => one.ok).map(one => one.id);
    if (done.length > 0) await this.outbox.remove(done);
    for (const { id, say } of answer.answers.filter(one => !one.ok && !one.again)) await this.outbox.refuse(id, say);
    const again = answer.answers.find(one => one.again);
    if (again) this.trouble = again.say;
    this.heard(answer);
    return Boolean(again);
  }
}
