// Keeps what is typed until the server says that it is stored. A field has a name (data-field), the stored text (data-kept), the
// text that the server shows (data-shown), and the newest texts that came in (data-heard) and were answered (data-seq). The text
// in the field belongs to this script alone: an older answer never wins over it. What is not stored survives an outage, a reload
// and a restart.
import * as box from "./kept.js";
import * as commands from "./commands.js";
import * as lines from "./lines.js";
import * as opening from "./opening.js";
import { fields, isOfForm, isShut, named, pageOf, scopeOf } from "./places.js";

export const idOf = el => box.id(pageOf(), scopeOf(el), el.dataset.field);
const answered = el => Number(el.dataset.seq ?? 0);
const heard = el => Number(el.dataset.heard ?? 0);

const seen = new WeakSet(), rounds = new WeakMap(), timers = new WeakMap();
const unsent = new Set();
let counter = 0, isDown = false;

export function read(el) {
  return el.type === "checkbox" ? String(el.checked) : el.type === "radio" ? chosen(el) : el.value;
}

function chosen(el) {
  const group = [...(el.closest("fieldset, form") ?? document).querySelectorAll(`input[type=radio][name="${el.name}"]`)];
  return group.find(one => one.checked)?.value ?? "";
}

function write(el, text) {
  if (el.type === "checkbox") el.checked = text === "true";
  else if (el.type === "radio") el.checked = el.value === text;
  else if (el.value !== text) el.value = text;
}

// A field that sends every keystroke and was emptied stays empty until it is left: what the server shows in the place of nothing
// would stand before the next keystroke.
const isEmptied = el => el.dataset.send === "input" && el.value === "" && el === document.activeElement;

function show(el) {
  if (!isEmptied(el)) write(el, el.dataset.shown);
}

function fill({ target: el }) {
  if (el.dataset?.send === "input" && !box.has(idOf(el))) write(el, el.dataset.shown);
}

// Takes down what stands in the field. Back at the stored text there is nothing to keep, unless another one is on its way.
export function note(el) {
  const id = idOf(el), value = read(el);
  let entry = box.get(id);
  opening.typedIn(scopeOf(el));
  if (!entry) {
    if (value === el.dataset.shown) return;
    entry = { value: null, base: el.dataset.kept, seq: 0, sent: 0, mine: [] };
  }
  if (entry.value === value) return;
  Object.assign(entry, { value, seq: ++counter, left: false });
  const isBack = value === el.dataset.kept && value === el.dataset.shown && entry.sent <= answered(el);
  if (isBack) box.drop(id);
  else box.put(id, entry);
  say();
}

// Sends the newest text, once; of a line, the newest texts of all its fields.
export function send(el) {
  const due = (lines.of(el) ? fields(lines.of(el)) : [el]).filter(isDue);
  due.forEach((one, at) => raise(one, at < due.length - 1));
}

// A slider waits until its last place came in.
function isDue(el) {
  const entry = box.get(idOf(el));
  if (!entry || isDown || isShut(el) || entry.sent >= entry.seq) return false;
  return el.type !== "range" || heard(el) >= entry.sent;
}

function raise(el, more) {
  const entry = box.get(idOf(el));
  entry.sent = entry.seq;
  if (!entry.mine.includes(entry.value)) entry.mine.push(entry.value);
  box.put(idOf(el), entry);
  const { value, base, seq } = entry;
  el.dispatchEvent(new CustomEvent("shop-typed", { bubbles: true, detail: { value, base, seq, more } }));
  say();
}

// The server drew the field: is its answer about the newest text?
function settle(el) {
  const id = idOf(el);
  if (hasNewRound(el)) box.drop(id);
  const entry = box.get(id), isNew = !seen.has(el);
  seen.add(el);
  if (!entry) return show(el);
  if (isNew) entry.sent = 0;
  const { kept, shown } = el.dataset;
  if (entry.sent > 0 && answered(el) >= entry.seq) {
    if (shown !== kept) return;
    box.drop(id);
    show(el);
    return;
  }
  // An earlier text of this device is stored, or was stored before the page was opened again: that is no conflict.
  if (entry.mine.includes(kept)) entry.base = kept;
  write(el, entry.value);
  if (!entry.seq || entry.sent === 0) entry.seq = ++counter;
  if (entry.sent < entry.seq && (entry.sent === 0 || el.type === "range")) unsent.add(el);
}

// Once all of a line's fields are known, so that they are sent together; not what is being typed.
function sendUnsent() {
  for (const el of unsent) if (el.isConnected && box.has(idOf(el)) && !waits(el)) send(el);
  unsent.clear();
}

function hasNewRound(el) {
  const now = `${el.dataset.round ?? 0} ${el.closest("[data-form]")?.dataset.round ?? 0}`, before = rounds.get(el);
  rounds.set(el, now);
  return before !== undefined && before !== now;
}

// How saving stands: only what the server answered as stored is called saved.
export function say() {
  const places = [...document.querySelectorAll("[data-save-state]")];
  const waiting = fields().filter(el => !isOfForm(el) && box.has(idOf(el)));
  const isAnswered = el => answered(el) >= box.get(idOf(el)).seq;
  const open = box.count(pageOf(), scope => !named(scope, "form"));
  const words = open === 0 ? "Saved"
    : isDown ? `Kept on this device, not saved yet (${open})`
    : waiting.some(el => box.get(idOf(el)).sent > 0 && !isAnswered(el)) ? "Saving…"
    : waiting.some(isAnswered) ? "Not saved: check the marked fields"
    : `Not saved yet (${open})`;
  for (const place of places) if (place.textContent !== words) place.textContent = words;
  offerUndo(open > 0);
  const notice = document.querySelector("[data-kept-count]");
  const note = open > 0 ? ` ${open} not saved yet.` : "";
  if (notice && notice.textContent !== note) notice.textContent = note;
}

// The server shut the undo button, or did not: while the line is down it depends on what is kept here.
function offerUndo(hasKept) {
  for (const button of document.querySelectorAll("button[data-undo]")) {
    if (isDown && !("shut" in button.dataset)) button.dataset.shut = String(button.disabled);
    const isShut = isDown ? !hasKept : button.dataset.shut ? button.dataset.shut === "true" : button.disabled;
    if (!isDown) delete button.dataset.shut;
    if (button.disabled !== isShut) button.disabled = isShut;
  }
}

// While the line is down, undo takes back what was typed last on this page and is kept here.
export function undoKept() {
  const kept = fields().filter(el => box.has(idOf(el))).sort((a, b) => box.get(idOf(b)).seq - box.get(idOf(a)).seq)[0];
  if (!kept) return false;
  write(kept, kept.dataset.kept);
  note(kept);
  kept.focus();
  return true;
}

export const lineIsDown = () => isDown;

// Whether a field holds typing that is not stored.
export const isTyped = el => "field" in el.dataset
  ? box.has(idOf(el)) || ![el.dataset.kept, el.dataset.shown].includes(read(el))
  : el.value !== "";

// Sends all texts of a form, in order, before its command.
export function flush(form) {
  for (const el of fields(form)) {
    note(el);
    send(el);
  }
}

// A button that offers a text for a field writes it there, as if it was typed.
function writeInto(button) {
  const { writes, into, of } = button.dataset;
  const el = named(of, "form", "scope")?.querySelector(`[data-field="${CSS.escape(into)}"]`);
  if (!el) return;
  write(el, writes);
  el.focus();
  note(el);
  if (!lines.of(el)) send(el);
}

const contents = form => JSON.stringify(fields(form).map(el => [el.dataset.field, read(el)]));

export function forget(scope) {
  box.forget(commands.pageOf(scope) ?? pageOf(), scope);
  commands.done(scope);
  say();
}

function line(state) {
  isDown = state !== "hide";
  document.body.dataset.line = isDown ? "down" : "up";
  if (!isDown) {
    opening.lineIsBack();
    const kept = fields().filter(el => box.has(idOf(el)));
    for (const el of kept) if (heard(el) < box.get(idOf(el)).seq) box.get(idOf(el)).sent = 0;
    for (const el of kept) if (!waits(el)) send(el);
    commands.again();
  }
  say();
}

// A text that its field, or its line, sends only when it is left is not sent while the cursor is in it.
function waits(el) {
  const isSentWhenLeft = el.type === "text" && !("send" in el.dataset);
  const isHere = lines.of(el) ? lines.of(el).contains(document.activeElement) : isSentWhenLeft && el === document.activeElement;
  const entry = box.get(idOf(el));
  return isHere && entry.sent === 0 && !entry.left;
}

const isBegun = row => fields(row).some(el => box.has(idOf(el)));

function typing(event) {
  const el = event.target;
  if (!el.dataset?.field) return;
  const isWhole = el.matches("select, [type=checkbox], [type=radio]");
  if (event.type === "input" && isWhole) return;
  note(el);
  if (lines.of(el)) return lines.typed(el, isWhole);
  const entry = box.get(idOf(el));
  if (entry && event.type === "change") entry.left = true;
  if (event.type === "change" || el.dataset.send === "input" || el.type === "range") return send(el);
  if (el.dataset.send !== "pause") return;
  clearTimeout(timers.get(el));
  timers.set(el, setTimeout(() => send(el), 500));
}

function changed(records) {
  const touched = new Set();
  for (const record of records) {
    if (record.type === "attributes") {
      if (record.target.matches("[data-field]")) touched.add(record.target);
      else for (const el of fields(record.target)) touched.add(el);
      continue;
    }
    if (record.target.matches?.("select[data-field]")) touched.add(record.target);
    for (const node of record.addedNodes) {
      if (node.nodeType !== Node.ELEMENT_NODE) continue;
      if (node.matches("[data-field]")) touched.add(node);
      for (const el of fields(node)) touched.add(el);
    }
  }
  for (const el of touched) if (el.isConnected) settle(el);
  commands.answered();
  opening.open(settle);
  sendUnsent();
  say();
}

export function begin() {
  for (const event of ["input", "change"]) document.addEventListener(event, typing, true);
  document.addEventListener("focusout", fill, true);
  document.addEventListener("shop-line", event => line(event.detail));
  document.addEventListener("click", event => {
    const button = isDown && event.target.closest?.("main button");
    if (!button) return;
    event.stopPropagation();
    event.preventDefault();
    if (button.matches("[data-undo]")) undoKept();
  }, true);
  lines.begin();
  document.addEventListener("click", event => {
    const button = event.target.closest?.("[data-writes]");
    if (button) writeInto(button);
  });
  commands.begin({ flush, contents, isBegun, isDown: lineIsDown });
  new MutationObserver(changed).observe(document.body, {
    subtree: true, childList: true, attributes: true,
    attributeFilter: ["data-kept", "data-shown", "data-heard", "data-seq", "data-round", "data-answer", "min", "max", "disabled"],
  });
  for (const el of fields()) settle(el);
  sendUnsent();
  window.shopFields = { forget };
  say();
}
