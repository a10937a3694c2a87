// Kept typing comes back to where it was typed: its form is opened again, its row is found again.
import * as box from "./kept.js";
import { fields, isShut, named, pageOf } from "./places.js";

const opened = new Set(), adopted = new Set();

// Somebody types in this form or panel: it is open, or was.
export const typedIn = scope => opened.add(pageOf() + scope);

// The line was down: what was closed by the server meanwhile is opened once more.
export const lineIsBack = () => opened.clear();

// Typing for a row that never was stored goes into the new row, which has another name after the page was opened again.
function adopt(settle) {
  const row = document.querySelector("[data-adopts]");
  if (!row || isShut(row) || adopted.has(pageOf())) return;
  adopted.add(pageOf());
  for (const scope of box.scopes(pageOf())) {
    if (!scope.startsWith(row.dataset.adopts) || named(scope, "scope")) continue;
    box.move(pageOf(), scope, row.dataset.scope);
    for (const el of fields(row)) settle(el);
  }
}

// A form or panel with kept typing is opened again when the page is, once: one that was here and closed was sent or given up.
export function open(settle) {
  adopt(settle);
  for (const scope of box.scopes(pageOf())) {
    const seen = pageOf() + scope;
    if (named(scope, "form", "scope")) opened.add(seen);
    if (opened.has(seen)) continue;
    const opener = named(scope, "opens");
    if (!opener || isShut(opener)) continue;
    opened.add(seen);
    opener.click();
  }
}
