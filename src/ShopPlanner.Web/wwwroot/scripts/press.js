// When a page goes live its links are drawn anew. A press on a link that began before and ends after that would lead nowhere,
// since the browser counts it on neither of the two: it is carried over to the link that stands there now.
let pressed = null;

export function begin() {
  document.addEventListener("pointerdown", event => {
    const link = event.isPrimary && event.button === 0 ? event.target.closest("a[href]") : null;
    pressed = link && { link, href: link.href };
  }, true);
  document.addEventListener("pointerup", event => {
    const begun = pressed;
    pressed = null;
    if (!begun || begun.link.isConnected) return;
    const now = document.elementFromPoint(event.clientX, event.clientY)?.closest("a[href]");
    if (now?.href === begun.href) now.click();
  }, true);
  document.addEventListener("pointercancel", () => pressed = null, true);
}
