// The idea page's hand: parts are picked in the drawing. The server works everything out.
import { ask } from "./ask.js";
import { lineIsDown } from "./fields.js";

export function attach(root, owner) {
  root.addEventListener("click", event => {
    const mark = event.target.closest(".piece-picture [data-mark]")?.dataset.mark;
    if (mark && !lineIsDown()) ask(owner, "Pick", [mark]);
  });
}

// Opens the sections around a field, and puts the cursor there.
export function show(root, section, key) {
  const part = root.querySelector(`[data-section="${section}"]`);
  const field = key && part?.querySelector(`[data-field="${CSS.escape(key)}"]`);
  const aim = field || part;
  if (!aim) return;
  for (let box = aim.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
  aim.scrollIntoView({ block: "center" });
  (field || part.querySelector("summary, input, button"))?.focus({ preventScroll: true });
}
