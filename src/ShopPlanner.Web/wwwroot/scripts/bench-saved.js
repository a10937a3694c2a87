// Says where the marks are, in words and with a sign: at the shop's computer, on this tablet, or not saved. What was
// refused stands below with the reason, until somebody sends it again or discards it.
const put = (place, text) => { if (place.textContent !== text) place.textContent = text; };
const count = number => number === 1 ? "1 mark" : `${number} marks`;

export function say(box, outbox, sender, names) {
  const { state, words } = stateOf(outbox, sender);
  box.hidden = false;
  box.dataset.saved = state;
  put(box.querySelector(".sign"), { server: "✓", tablet: "↑", nowhere: "!" }[state]);
  put(box.querySelector("[data-saved-words]"), words);
  sayRefused(box.querySelector("[data-refused]"), outbox, sender, names);
}

function stateOf(outbox, sender) {
  const waiting = outbox.waiting.filter(one => !one.say);
  if (waiting.some(one => one.isOnlyHere) || (outbox.trouble && !sender.isReached))
    return { state: "nowhere", words: `Not saved: this tablet can't keep marks, ${outbox.trouble}. `
      + (waiting.length > 0 ? `Leave this page open until ${count(waiting.length)} can be sent.` : "Leave this page open.") };
  if (waiting.length > 0)
    return { state: "tablet",
      words: `Saved on this tablet, ${count(waiting.length)} waiting to be sent. ${sender.trouble}`.trim() };
  if (sender.isReached === false)
    return { state: "tablet", words: `No connection: marks are saved on this tablet. ${sender.trouble}`.trim() };
  return { state: "server", words: "Saved on the shop's computer" };
}

function sayRefused(list, outbox, sender, names) {
  const refused = outbox.waiting.filter(one => one.say), key = refused.map(one => one.id + one.say).join();
  if (list.dataset.key === key) return;
  list.dataset.key = key;
  list.replaceChildren(...refused.map(one => {
    const item = document.createElement("li"), words = document.createElement("p");
    words.textContent = `Not taken: ${names(one)}. ${one.say}`;
    item.append(words,
      button("Send again", async () => { await outbox.again(one.id); sender.soon(); }),
      button("Discard", () => outbox.remove([one.id])));
    return item;
  }));
}

function button(text, act) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.textContent = text;
  made.addEventListener("click", act);
  return made;
}
