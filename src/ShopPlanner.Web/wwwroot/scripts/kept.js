// What this browser keeps of typing that is not stored yet: in memory, and in the browser's own store beyond the page's life.
// Where the browser has no store (a private window, a full disk) the page's memory is all there is.
const prefix = "shop-planner typed ", life = 30 * 24 * 3600 * 1000;
const memory = new Map();

export const id = (page, scope, field) => [page, scope, field].map(encodeURIComponent).join(" ");
const partsOf = one => one.split(" ").map(decodeURIComponent);

export const get = one => memory.get(one);
export const has = one => memory.has(one);

export function put(one, entry) {
  memory.set(one, entry);
  const { value, base, mine } = entry;
  attempt(store => store.setItem(prefix + one, JSON.stringify({ value, base, mine, at: Date.now() })));
}

export function drop(one) {
  memory.delete(one);
  attempt(store => store.removeItem(prefix + one));
}

export function forget(page, scope) {
  for (const one of [...memory.keys()]) {
    const [ofPage, ofScope] = partsOf(one);
    if (ofPage === page && ofScope === scope) drop(one);
  }
}

const ofPage = page => [...memory.keys()].map(partsOf).filter(([of]) => of === page).map(([, scope]) => scope);

export const scopes = page => new Set(ofPage(page).filter(scope => scope));

export const count = (page, counts) => ofPage(page).filter(counts).length;

// Moves what is kept for one scope to another: a new row has a new name after the page was opened again.
export function move(page, from, to) {
  for (const one of [...memory.keys()]) {
    const [ofPage, scope, field] = partsOf(one);
    if (ofPage !== page || scope !== from) continue;
    const entry = memory.get(one);
    drop(one);
    put(id(page, to, field), entry);
  }
}

function attempt(act) {
  try {
    return act(localStorage);
  } catch (problem) {
    console.warn("This browser keeps nothing beyond the page:", problem.name);
    return null;
  }
}

function load() {
  for (const key of attempt(store => Object.keys(store)) ?? []) {
    if (!key.startsWith(prefix)) continue;
    const kept = parse(attempt(store => store.getItem(key)));
    if (!kept || Date.now() - kept.at > life) attempt(store => store.removeItem(key));
    else memory.set(key.slice(prefix.length), { value: kept.value, base: kept.base, mine: kept.mine ?? [], seq: 0, sent: 0 });
  }
}

function parse(text) {
  try {
    return JSON.parse(text);
  } catch (problem) {
    console.warn("Unreadable typing in the browser's store is dropped:", problem.message);
    return null;
  }
}

load();
