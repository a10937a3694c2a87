// The keys for undo and redo of a page that keeps steps. Typing that is not stored belongs to its field: there the browser's
// own undo works. Elsewhere it must not: some browsers would take back what was typed last anywhere on the page, stored or not.
import { ask } from "./ask.js";
import { newId } from "./ids.js";
import { isTyped, lineIsDown, undoKept } from "./fields.js";
import { isText } from "./texts.js";

const isOwn = el => isText(el) && isTyped(el);

function wanted(event) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return null;
  const key = event.key.toLowerCase();
  return key === "y" || (key === "z" && event.shiftKey) ? "redo" : key === "z" ? "undo" : null;
}

export function attach(root, owner) {
  const keys = event => {
    if (!root.isConnected) return document.removeEventListener("keydown", keys);
    const step = wanted(event);
    if (!step || isOwn(event.target)) return;
    event.preventDefault();
    if (!lineIsDown()) ask(owner, "Step", [newId(), step === "redo"], true);
    else if (step === "undo") undoKept();
  };
  document.addEventListener("keydown", keys);
}
