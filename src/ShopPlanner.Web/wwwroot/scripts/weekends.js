// Dragging a task to another window, by mouse, pen and finger. Only the grip drags: a finger elsewhere scrolls the page. What
// can be dragged can be moved by the menu beside it.
import { ask } from "./ask.js";
import { newId } from "./ids.js";

const edge = 72, pace = 16;

export function attach(root, owner) {
  let drag = null;

  const windowAt = event => document.elementFromPoint(event.clientX, event.clientY)?.closest("[data-window]");
  const mark = target => {
    for (const card of root.querySelectorAll("[data-drop]")) if (card !== target) delete card.dataset.drop;
    if (target && target !== drag.from) target.dataset.drop = "here";
  };
  const end = () => {
    document.removeEventListener("keydown", escaped);
    mark(null);
    delete drag.line.dataset.dragged;
    drag = null;
  };
  const escaped = event => {
    if (event.key === "Escape") end();
  };

  root.addEventListener("pointerdown", event => {
    const grip = event.target.closest(".weekend-grip");
    if (!grip || event.button !== 0) return;
    event.preventDefault();
    grip.setPointerCapture(event.pointerId);
    drag = { line: grip.closest("[data-task]"), from: grip.closest("[data-window]") };
    drag.line.dataset.dragged = "yes";
    document.addEventListener("keydown", escaped);
  });
  root.addEventListener("pointermove", event => {
    if (!drag) return;
    if (event.clientY < edge) scrollBy(0, -pace);
    if (event.clientY > innerHeight - edge) scrollBy(0, pace);
    mark(windowAt(event));
  });
  root.addEventListener("pointerup", event => {
    if (!drag) return;
    const { line, from } = drag, target = windowAt(event);
    end();
    if (target && target !== from) ask(owner, "Move", [newId(), line.dataset.task, target.dataset.window], true);
  });
  root.addEventListener("pointercancel", () => drag && end());
}
