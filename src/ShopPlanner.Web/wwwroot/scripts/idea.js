// The idea page's hand: parts and bays are picked in the drawing, by a press or by Enter. The server works everything out.
import { ask } from "./ask.js";
import { lineIsDown } from "./fields.js";

export function attach(root, owner) {
  root.addEventListener("click", event => {
    pick(event.target.closest(".piece-picture :is([data-mark], [data-bay])"), owner);
  });
  root.addEventListener("keydown", event => {
    const place = ["Enter", " "].includes(event.key) && event.target.closest(".piece-picture [tabindex]");
    if (!place) return;
    event.preventDefault();
    if (!event.repeat) pick(place, owner);
  });
  root.dataset.picks = "ready";
}

function pick(place, owner) {
  if (!place || lineIsDown()) return;
  const { mark, bay } = place.dataset;
  if (bay) ask(owner, "PickBay", [bay]);
  else ask(owner, "Pick", [mark]);
}

// Opens the sections around a field or a button, and puts the cursor there.
export function show(root, section, key) {
  const part = root.querySelector(`[data-section="${section}"]`), name = key && CSS.escape(key);
  const field = name && part?.querySelector(`[data-field="${name}"], [data-opens="${name}"]`);
  const aim = field || part;
  if (!aim) return;
  for (let box = aim.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
  aim.scrollIntoView({ block: "center" });
  (field || part.querySelector("summary, input, button"))?.focus({ preventScroll: true });
}

// The part that was picked, where it lies out of sight.
export function reveal(root) {
  root.querySelector(".part-detail")?.scrollIntoView({ block: "nearest" });
}
