// The keys of the search field: "/" goes to it from anywhere but a field, the arrows go through what was found.
import { takesLetters } from "./texts.js";

const field = () => [...document.querySelectorAll("[data-find] input:not(:disabled)")].find(one => one.checkVisibility());

function open(event) {
  if (event.key !== "/" || event.ctrlKey || event.metaKey || event.altKey || takesLetters(event.target)) return;
  const input = field();
  if (!input) return;
  event.preventDefault();
  input.focus();
  input.select();
}

function move(event) {
  const place = event.target.closest?.("[data-find]");
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (!place || (!step && event.key !== "Escape")) return;
  const input = place.querySelector("input"), links = [...place.querySelectorAll("a[href]")];
  if (event.key === "Escape") return event.target === input ? undefined : input.focus();
  const at = links.indexOf(event.target) + step;
  const next = at < 0 ? input : links[at];
  if (!next || (event.target === input && step < 0)) return;
  event.preventDefault();
  next.focus();
}

export function begin() {
  document.addEventListener("keydown", open);
  document.addEventListener("keydown", move);
}
