// Keys, pasting and early saving of the parts list. The server holds the truth: data-kept is what it last knew of a cell.
const pause = 500;
// Beyond this the line to the server would break: more than the longest list holds.
const mostPasted = 500_000;

const cells = table => [...table.querySelectorAll("input[data-col]")];
const isOpen = cell => cell.value !== cell.dataset.kept;
const send = cell => { if (isOpen(cell)) cell.dispatchEvent(new Event("change", { bubbles: true })); };

export function attach(table, owner, name) {
  const timers = new Map();
  const listen = (target, event, act) => target.addEventListener(event, act);
  const ask = (what, ...given) => owner.invokeMethodAsync(what, ...given).catch(() => { /* the line is broken, and the page says so */ });

  listen(table, "input", event => {
    const cell = event.target;
    if (!cell.dataset.col) return;
    clearTimeout(timers.get(cell));
    timers.set(cell, setTimeout(() => send(cell), pause));
  });
  listen(table, "keydown", event => move(table, event));
  listen(table, "paste", event => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!/[\t\n]/.test(text.trim())) return;
    event.preventDefault();
    if (text.length > mostPasted) return ask("RefusePaste", text.split("\n").length);
    const cell = event.target.closest?.("input[data-col]");
    ask("Paste", text, cell?.dataset.col ?? null, cell?.closest("tr").dataset.row ?? null);
  });
  const keys = event => {
    if (!table.isConnected) return document.removeEventListener("keydown", keys);
    step(table, event, ask);
  };
  listen(document, "keydown", keys);
  const line = event => {
    if (!table.isConnected) return document.removeEventListener("shop-line", line);
    if (event.detail === "hide") cells(table).forEach(send);
  };
  listen(document, "shop-line", line);
  const leave = () => {
    if (!table.isConnected) return removeEventListener("pagehide", leave);
    keep(table, name);
  };
  listen(window, "pagehide", leave);
  bringBack(table, name);
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

// While a cell holds typing that is not sent, the browser's own undo belongs to it.
function step(table, event, ask) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const wanted = key === "y" || (key === "z" && event.shiftKey) ? "Redo" : key === "z" ? "Undo" : null;
  const here = event.target;
  if (!wanted || (here.matches("input, select, textarea") && !table.contains(here)) || (here.dataset?.col && isOpen(here))) return;
  event.preventDefault();
  ask(wanted);
}

// Typing that the server has not seen is carried over a reload of the page.
function keep(table, name) {
  const open = cells(table).filter(isOpen).map(cell => {
    const row = cell.closest("tr");
    return { row: row.hasAttribute("data-new") ? "new" : row.dataset.row, col: cell.dataset.col, value: cell.value };
  });
  if (open.length > 0) sessionStorage.setItem(name, JSON.stringify(open));
}

function bringBack(table, name) {
  const kept = JSON.parse(sessionStorage.getItem(name) ?? "[]");
  sessionStorage.removeItem(name);
  for (const { row, col, value } of kept) {
    const line = table.querySelector(row === "new" ? "tr[data-new]" : `tr[data-row='${row}']`);
    const cell = line?.querySelector(`input[data-col='${col}']`);
    if (!cell) continue;
    cell.value = value;
    send(cell);
  }
}
