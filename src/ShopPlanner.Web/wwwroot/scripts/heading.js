// A page that was gone to has the focus on its heading, so that a screen reader begins there. It is asked for a round trip after
// the page is live: by then somebody may be typing, and the cursor is not taken out of a field.
const isField = el => el?.matches("input, select, textarea") && el.closest("main");

export function focus() {
  if (!isField(document.activeElement)) document.querySelector("h1")?.focus();
}
