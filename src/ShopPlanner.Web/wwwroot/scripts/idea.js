// The idea page's hand: parts are picked in the drawing. The server works everything out.
import { ask } from "./ask.js";
import { lineIsDown } from "./fields.js";

export function attach(root, owner) {
  root.addEventListener("click", event => {
    const mark = event.target.closest(".piece-picture [data-mark]")?.dataset.mark;
    if (mark && !lineIsDown()) ask(owner, "Pick", [mark]);
  });
}
