// A page that was gone to has the focus on its heading, so that a screen reader begins there. It is asked for a round trip after
// the page is live: by then somebody may be typing or going through it by Tab. The focus is not taken out of a field, and on a
// page that the browser opened, where nothing has it at first, not away from anything.
const isField = el => el?.matches("input, select, textarea") && el.closest("main");

export function focus(isFirst) {
  const here = document.activeElement;
  const isTaken = isFirst ? here !== null && here !== document.body : isField(here);
  if (!isTaken) document.querySelector("h1")?.focus();
}
