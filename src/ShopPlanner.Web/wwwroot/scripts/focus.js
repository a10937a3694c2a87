// Where the focus goes. A form that opens has the cursor in its first field at once, unless somebody types elsewhere already.
// What had the focus and is drawn no more hands it to what is next to it; the browser would let it fall to the page's start.
const usable = "a[href], summary, " + ["button", "input", "select", "textarea"].map(kind => kind + ":not([disabled])").join(", ");
const isField = el => el?.matches("input, select, textarea") && el.closest("main");
const isNowhere = () => !document.activeElement || document.activeElement === document.body;
const shown = el => el?.isConnected && el.checkVisibility() ? el : null;

// What had the focus last, and what had it last outside of the notice.
let last = null, before = null;

// What a control does, in its first words: "Throw away B7" and "Throw away B8" do the same.
const kindOf = el => el.dataset.field
  ?? (el.textContent.trim() || el.getAttribute("aria-label") || "").split(" ").slice(0, 2).join(" ");

function alike(el, place) {
  return [...place.querySelectorAll(usable)].find(one => one.tagName === el.tagName && kindOf(one) === kindOf(el) && shown(one));
}

// The places of the same kind after the one that is gone, then those before it.
function* neighbours(gone, record) {
  for (const [step, from] of [["nextSibling", record.nextSibling], ["previousSibling", record.previousSibling]])
    for (let one = from; one; one = one[step])
      if (one.nodeType === Node.ELEMENT_NODE && one.matches(gone.tagName) && one.parentNode === record.target) yield one;
}

// A page that goes live draws its links anew.
function ofItself(el, gone, record) {
  return el.href && [...record.target.querySelectorAll?.("a[href]") ?? []].find(one => one.href === el.href && shown(one));
}

// A drawing is drawn anew with what was chosen in it.
function ofDrawing(el) {
  const kind = ["bay", "mark"].find(name => el.dataset[name] !== undefined);
  const same = kind && `.piece-picture [tabindex][data-${kind}="${CSS.escape(el.dataset[kind])}"]`;
  return same && [...document.querySelectorAll(same)].find(shown);
}

// What was found is drawn again while somebody goes through it: what is found no more leads back to the search field.
function ofFound(el, gone, record) {
  return shown(record.target.closest?.("[data-find]")?.querySelector("input"));
}

function ofNewLine(el, gone, record) {
  return gone.querySelector("[data-next]") && shown(record.target.querySelector("[data-next]"));
}

function ofOpener(el) {
  const place = el.closest("[data-form], [data-scope]"), name = place?.dataset.form ?? place?.dataset.scope;
  return name && shown(document.querySelector(`[data-opens="${CSS.escape(name)}"]`));
}

function ofNeighbour(el, gone, record) {
  if (!gone.matches("tr, li, tbody, section")) return null;
  const places = [...neighbours(gone, record)];
  const same = places.map(place => alike(el, place)).find(Boolean);
  return same ?? (gone.matches("section") ? null : shown(places[0]?.querySelector(usable)));
}

function ofHeading(el, gone, record) {
  const near = record.target.closest?.("section")?.querySelector("h1, h2, h3");
  const heading = shown(near) ?? document.querySelector("main h1");
  if (heading && !heading.hasAttribute("tabindex")) heading.tabIndex = -1;
  return heading;
}

function handOn(records) {
  const el = last;
  const record = records.find(one => [...one.removedNodes].some(node => node.contains(el)));
  if (!record) return;
  last = null;
  const gone = [...record.removedNodes].find(node => node.contains(el));
  const isOfNotice = el.closest("[data-note]") !== null;
  const next = isOfNotice && shown(before) ? [() => before]
    : [ofItself, ofDrawing, ofFound, ofNewLine, ofOpener, ofNeighbour, ofHeading];
  for (const find of next) {
    const place = find(el, gone, record);
    if (place) place.focus();
    if (!isNowhere()) return;
  }
}

// A link to a place on the page: the framework scrolls there, and the keyboard follows. The place may be drawn only then.
let awaited = "";

function follow(event) {
  const link = event.target.closest?.("a[href*='#']");
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey || link.pathname !== location.pathname) return;
  awaited = decodeURIComponent(link.hash.slice(1));
  setTimeout(arrive);
}

function arrive() {
  const place = awaited ? document.getElementById(awaited) : null;
  if (!place?.hasAttribute("tabindex")) return;
  awaited = "";
  place.focus({ preventScroll: true });
}

function changed(records) {
  arrive();
  for (const node of records.flatMap(record => [...record.addedNodes])) {
    if (node.nodeType !== Node.ELEMENT_NODE) continue;
    const first = node.matches("[data-begins]") ? node : node.querySelector("[data-begins]");
    if (first?.isConnected && !isField(document.activeElement)) first.focus();
  }
  if (last && !last.isConnected && isNowhere()) handOn(records);
}

export function begin() {
  document.addEventListener("focusin", event => {
    last = event.target;
    if (!last.closest("[data-note]")) before = last;
  }, true);
  document.addEventListener("click", follow);
  document.addEventListener("keydown", event => {
    const isUndo = event.altKey && !event.ctrlKey && !event.metaKey && event.code === "KeyZ";
    const undo = isUndo && document.querySelector("[data-note-undo]");
    if (!undo) return;
    event.preventDefault();
    undo.click();
  }, true);
  new MutationObserver(changed).observe(document.body, { subtree: true, childList: true });
}
