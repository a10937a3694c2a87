// A page draws its links and its buttons for cuts anew: when it goes live, and at the bench when an answer comes. A press that
// began before and ends after that would do nothing, since the browser counts it on neither of the two: it is carried over to
// what stands there now and does the same. A finger is counted where it is lifted, and needs none of this.
const controls = "a[href], button[data-cut]";
const doing = el => el.href ?? `cut ${el.dataset.stock} ${el.dataset.cut} ${el.dataset.made}`;
let pressed = null;

const controlOf = node => node?.closest?.(controls);

export function begin() {
  document.addEventListener("pointerdown", event => {
    const isPress = event.isPrimary && event.button === 0 && event.pointerType !== "touch";
    const control = isPress ? controlOf(event.target) : null;
    pressed = control && { control, does: doing(control) };
  }, true);
  document.addEventListener("click", event => {
    // Of what is gone it makes a click on what is around it.
    const control = controlOf(event.target);
    if (pressed && control && doing(control) === pressed.does) pressed = null;
  }, true);
  document.addEventListener("pointerup", event => {
    const begun = pressed;
    // The browser's own click, where there is one, comes before this.
    if (begun) setTimeout(() => carryOver(begun, event.clientX, event.clientY));
  }, true);
  document.addEventListener("pointercancel", () => pressed = null, true);
}

function carryOver(begun, x, y) {
  if (pressed !== begun) return;
  pressed = null;
  const now = controlOf(document.elementFromPoint(x, y));
  if (now && doing(now) === begun.does) now.click();
}
