// Lines of a table whose fields belong together: they are stored whole, when the line is left or Enter is pressed.
import * as box from "./kept.js";
import * as commands from "./commands.js";
import { idOf, note, send } from "./fields.js";
import { fields } from "./places.js";

export const of = el => el.closest("[data-whole-line]");

function leave(line) {
  for (const el of fields(line)) {
    note(el);
    const entry = box.get(idOf(el));
    if (entry) entry.left = true;
  }
  send(fields(line)[0]);
}

// A box that is ticked in a line of which nothing else is being changed need not wait until the line is left.
export function typed(el, isWhole) {
  const line = of(el), isHere = line.contains(document.activeElement);
  const isAlone = fields(line).every(one => one === el || !box.has(idOf(one)));
  if (isWhole && (isAlone || !isHere)) leave(line);
}

// The focus went out of a line. A window that was left comes back to the same line.
function left(event) {
  const row = event.target.closest?.("[data-whole-line], [data-form]:not(form)");
  if (!row || row.contains(event.relatedTarget ?? document.activeElement)) return;
  // A line that is drawn no more is not left: that shows after the drawing.
  queueMicrotask(() => {
    if (!row.isConnected) return;
    if (row.matches("[data-whole-line]")) leave(row);
    else commands.leave(row);
  });
}

export function begin() {
  document.addEventListener("focusout", left, true);
  document.addEventListener("keydown", event => {
    const line = event.key === "Enter" && event.target.matches?.("input[data-field]") && of(event.target);
    if (line) leave(line);
  }, true);
}
