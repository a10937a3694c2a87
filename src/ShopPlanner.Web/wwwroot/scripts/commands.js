// Buttons and forms that make something. A press has an id, the same for a double click, a press repeated after an outage, and a
// press after the page was opened again, until the server says that it was done.
import { newId } from "./ids.js";

const prefix = "shop-planner command ";
const pages = new Map();
const pressed = new WeakMap(), leftWithoutLine = new Set();
let hand;

const key = name => prefix + location.pathname + " " + name;
const nameOf = el => el.dataset.command ?? el.dataset.form;
export const pageOf = name => pages.get(name);

export function begin(given) {
  hand = given;
  document.addEventListener("click", event => {
    const button = event.target.closest?.("[data-command]");
    if (button && !button.disabled) press(button, button);
  }, true);
  document.addEventListener("keydown", event => {
    const isEnter = event.key === "Enter" && event.target.matches?.("input[data-field]");
    const row = isEnter ? event.target.closest("[data-form]:not(form)") : null;
    const button = row?.querySelector("[data-command]");
    if (button) press(button, button);
  }, true);
  document.addEventListener("submit", event => {
    const form = event.target.closest("form[data-form]");
    if (!form) return;
    event.preventDefault();
    event.stopPropagation();
    press(form, event.submitter);
  }, true);
}

// A line of a table that is a form is sent when it is left. What was refused is not sent again until something in it changed.
export function leave(row) {
  const button = row.querySelector("[data-command]");
  if (!button || !hand.isBegun(row)) return;
  if (hand.isDown()) leftWithoutLine.add(row);
  else if (pressed.get(row) !== hand.contents(row)) press(button, button);
}

function press(el, shown) {
  if (hand.isDown() || el.dataset.busy || el.closest("fieldset.until-live[disabled]")) return;
  const form = el.closest("[data-form]");
  if (form) {
    hand.flush(form);
    pressed.set(form, hand.contents(form));
  }
  pages.set(nameOf(el), location.pathname);
  el.dataset.busy = el.dataset.answer ?? "0";
  (shown ?? el).setAttribute("aria-busy", "true");
  raise(el);
}

function raise(el) {
  const id = idOf(nameOf(el), el.closest("[data-form]"));
  el.dispatchEvent(new CustomEvent("shop-command", { bubbles: true, detail: { id } }));
}

// The server answered: done or refused, the button can be pressed again.
export function answered() {
  for (const el of document.querySelectorAll("[data-busy]")) {
    if (el.dataset.busy === el.dataset.answer) continue;
    delete el.dataset.busy;
    for (const busy of [el, ...el.querySelectorAll("[aria-busy]")]) busy.removeAttribute("aria-busy");
  }
}

// The line was down: a press without an answer is sent again, under the same id.
export function again() {
  for (const el of document.querySelectorAll("[data-busy]")) raise(el);
  for (const row of leftWithoutLine) if (row.isConnected) leave(row);
  leftWithoutLine.clear();
}

export function done(name) {
  const page = pages.get(name) ?? location.pathname;
  attempt(store => store.removeItem(prefix + page + " " + name));
  made.delete(prefix + page + " " + name);
}

const made = new Map();

// Another content is another command.
function idOf(name, form) {
  const at = key(name), of = form ? hand.contents(form) : "";
  const known = made.get(at) ?? JSON.parse(attempt(store => store.getItem(at)) ?? "null");
  const kept = known?.of === of ? known : { id: newId(), of };
  made.set(at, kept);
  attempt(store => store.setItem(at, JSON.stringify(kept)));
  return kept.id;
}

function attempt(act) {
  try {
    return act(sessionStorage);
  } catch (problem) {
    console.warn("This browser keeps nothing beyond the page:", problem.name);
    return null;
  }
}
