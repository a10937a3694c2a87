// Keys and pasting of the parts list. What is typed is kept and sent by fields.js.
import { ask } from "./ask.js";
import { lineIsDown } from "./fields.js";
import { newId } from "./ids.js";

// Beyond this the line to the server would break: more than the longest list holds.
const mostPasted = 500_000;

const cells = table => [...table.querySelectorAll("input[data-col]")];

export function attach(table, owner) {
  table.addEventListener("keydown", event => move(table, event));
  table.addEventListener("paste", event => paste(table, event, owner));
}

// Without a line nothing is pasted: the words on the page say so, and the clipboard keeps it.
function paste(table, event, owner) {
  const text = event.clipboardData?.getData("text/plain") ?? "";
  if (!/[\t\n]/.test(text.trim())) return;
  event.preventDefault();
  if (lineIsDown()) return;
  if (text.length > mostPasted) return void ask(owner, "RefusePaste", [text.split("\n").length], true);
  const cell = event.target.closest?.("input[data-col]");
  const place = [cell?.dataset.col ?? null, cell?.closest("tr").dataset.row ?? null];
  ask(owner, "Paste", [text, ...place, newId()], true);
}

export function focusRow(table, index) {
  table.querySelectorAll("tr[data-row]")[index]?.querySelector("input[data-col='Name']")?.focus();
}

function move(table, event) {
  const cell = event.target;
  if (!cell.dataset?.col || event.ctrlKey || event.metaKey || event.altKey) return;
  const to = target(table, cell, event);
  if (!to) return;
  event.preventDefault();
  to.focus();
  to.select();
}

function target(table, cell, event) {
  const rows = [...table.querySelectorAll("tr[data-row]")];
  const at = rows.indexOf(cell.closest("tr"));
  const below = step => rows[at + step]?.querySelector(`input[data-col='${cell.dataset.col}']`);
  const beside = step => { const all = cells(rows[at]); return all[all.indexOf(cell) + step]; };
  const isWhole = cell.selectionStart === 0 && cell.selectionEnd === cell.value.length;
  switch (event.key) {
    case "Enter": return below(event.shiftKey ? -1 : 1);
    // The material's own list of suggestions opens with the arrows.
    case "ArrowDown": return cell.list ? null : below(1);
    case "ArrowUp": return cell.list ? null : below(-1);
    case "ArrowRight": return isWhole || cell.selectionStart === cell.value.length ? beside(1) : null;
    case "ArrowLeft": return isWhole || cell.selectionEnd === 0 ? beside(-1) : null;
    default: return null;
  }
}
