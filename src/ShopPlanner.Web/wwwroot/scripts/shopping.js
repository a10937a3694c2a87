// A shopping list on a phone. What is pressed is drawn at once and kept on this device (shopping-box.js); it is sent, in order,
// when the shop's computer can be reached. What is drawn is what the server said last, and upon it what is not sent yet.
import { newId } from "./ids.js";
import { Box } from "./shopping-box.js";
import { begin as beginSharing } from "./share.js";

const form = document.getElementById("list"), address = form.dataset.list, sign = form.dataset.sign;
const perUnit = 10000;
// Where a piece is, as the server says it.
const inRack = "inRack", tooSmall = "tooSmall", cut = "cut";
const box = new Box(address, JSON.parse(document.getElementById("list-state").textContent), draw);

// Two decimals, or as many as the amount has up to four: as the server writes it.
function plain(count) {
  const decimals = count % 100 ? (count % 10 ? 4 : 3) : 2;
  return (count / perUnit).toFixed(decimals);
}

const money = count => sign + plain(count);
const isPrice = text => /^\s*[$€£]?\s*\d+(\.\d{1,4})?\s*$/.test(text);
const read = text => isPrice(text) ? Math.round(Number(text.replace(/[$€£\s]/g, "")) * perUnit) : null;

// The list as it will be once everything is sent.
function ahead() {
  const { state, waiting } = box, lines = new Map(), supplies = new Map();
  for (const [stock, line] of Object.entries(state.lines))
    lines.set(stock, { ...line, bought: new Map(line.bought.map(one => [one.place, one])) });
  for (const [key, one] of Object.entries(state.supplies)) supplies.set(key, { ...one });
  let spent = state.spent;
  for (const tick of waiting) {
    const line = lines.get(tick.stock), supply = supplies.get(tick.of);
    if (line) spent += onLine(line, tick);
    if (supply) spent += onSupply(supply, tick);
  }
  return { lines, supplies, spent };
}

// Each returns how the money changes.
function onLine(line, tick) {
  if (tick.kind === "seen") {
    if (tick.price !== undefined) line.price = read(tick.price) ?? line.price;
    if (tick.inStock !== undefined) line.inStock = tick.inStock;
    return 0;
  }
  const known = line.bought.get(tick.place);
  if (tick.kind === "buy" && !known) {
    const price = tick.price ? read(tick.price) ?? line.price : line.planned;
    line.bought.set(tick.place, { place: tick.place, price, is: inRack });
    return price;
  }
  if (tick.kind === "back" && canGoBack(known)) {
    line.bought.delete(tick.place);
    return -known.price;
  }
  return 0;
}

function onSupply(supply, tick) {
  const before = supply.bought ? supply.price ?? 0 : 0;
  if (tick.bought !== undefined) supply.bought = tick.bought;
  if (tick.price !== undefined) supply.price = tick.price.trim() ? read(tick.price) ?? supply.price : undefined;
  return (supply.bought ? supply.price ?? 0 : 0) - before;
}

const count = (line, ...kinds) => [...line.bought.values()].filter(one => kinds.includes(one.is)).length;
const canGoBack = one => one?.is === inRack || one?.is === tooSmall;
const leftOf = line => Math.max(0, line.needed - count(line, inRack));
const extraOf = line => Math.max(0, count(line, inRack, tooSmall, cut) - line.asked);

function draw() {
  const { lines, supplies, spent } = ahead();
  let left = 0;
  for (const item of form.querySelectorAll("li[data-line]")) left += drawLine(item, lines.get(item.dataset.line));
  for (const item of form.querySelectorAll("li[data-supply]")) left += drawSupply(item, supplies.get(item.dataset.supply));
  sum("left", left);
  sum("spent", spent);
  say();
}

const sum = (name, count) => form.querySelector(`[data-sum="${name}"]`).textContent = money(count);
const put = (place, text) => { if (place && place.textContent !== text) place.textContent = text; };

function drawLine(item, line) {
  if (!line) return 0;
  const left = leftOf(line), have = line.asked - left, extra = extraOf(line);
  show(item, left === 0, left === 0 ? "back" : "buy");
  put(item.querySelector("[data-count]"), `${have} of ${line.asked}${extra ? `, ${extra} extra` : ""}`);
  put(item.querySelector("[data-said]"), left === 0 ? "all bought"
    : (left === line.asked ? "" : `${left} to buy, `) + money(left * line.price) + (line.inStock ? "" : " · not in stock"));
  put(item.querySelector("summary [data-price]"), money(line.price));
  item.querySelector("[data-gone]")?.setAttribute("aria-pressed", String(!line.inStock));
  fault(item, item.dataset.line);
  return left * line.price;
}

function drawSupply(item, supply) {
  if (!supply) return 0;
  show(item, supply.bought, "tick");
  put(item.querySelector("[data-price]"), supply.price === undefined ? "Price" : money(supply.price));
  fault(item, item.dataset.supply);
  return supply.bought ? 0 : supply.price ?? 0;
}

function show(item, isOn, verb) {
  const button = item.querySelector(".shopping-tick");
  button.setAttribute("aria-pressed", String(isOn));
  button.dataset.verb = verb;
  item.classList.toggle("have", isOn);
}

const fault = (item, of) => put(item.querySelector("[data-fault]"), box.refused[of] ?? "");

// Where the ticks are: here, on their way, or at the shop's computer.
function say() {
  const number = box.waiting.length, ticks = number === 1 ? "1 change" : `${number} changes`;
  put(form.querySelector("[data-state]"), box.trouble ? box.trouble
    : number === 0 ? (box.isReached ? "Saved" : "No connection. What you check off is kept on this phone.")
    : box.isReached ? `Sending ${ticks}…` : `${ticks} kept on this phone, not sent yet`);
}

const freePlaces = (line, number) => {
  const places = [];
  for (let place = 1; places.length < number; place++) if (!line.bought.has(place)) places.push(place);
  return places;
};
const backPlaces = line => [...line.bought.values()].filter(canGoBack).map(one => one.place).sort((a, b) => b - a);

function press(verb, of, item) {
  const { lines, supplies } = ahead(), line = lines.get(of), typed = item.querySelector("input")?.value ?? "";
  const buy = number => freePlaces(line, number).map(place => ({
    kind: "buy", stock: of, place, price: line.price === line.planned ? "" : plain(line.price) }));
  const back = places => places.map(place => ({ kind: "back", stock: of, place }));
  const seen = what => [{ kind: "seen", stock: of, ...what }];
  const [project, key] = [of.slice(0, of.indexOf(" ")), of.slice(of.indexOf(" ") + 1)];
  const supply = what => [{ kind: "supply", of, project, key, ...what }];
  switch (verb) {
    case "buy": return buy(leftOf(line));
    case "more": return buy(1);
    case "back": return back(backPlaces(line));
    case "less": return back(backPlaces(line).slice(0, 1));
    case "price": return seen({ price: typed });
    case "gone": return seen({ inStock: !line.inStock });
    case "tick": return supply({ bought: !supplies.get(of).bought });
    case "cost": return supply({ price: typed });
    default: return [];
  }
}

function pressed(event) {
  const button = event.target.closest("button[name=Do]");
  if (!button) return;
  event.preventDefault();
  const item = button.closest("li"), { verb } = button.dataset, of = item.dataset.line ?? item.dataset.supply;
  box.add(press(verb, of, item).map(tick => ({ id: newId(), ...tick })), of);
  if (verb === "price" || verb === "cost") button.closest("details").open = false;
}

form.addEventListener("click", pressed);
form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("keydown", event => {
  if (event.key !== "Enter" || !event.target.matches("input")) return;
  event.preventDefault();
  event.target.closest("details").querySelector("button").click();
});
box.heard = answer => {
  const again = document.querySelector("[data-again]");
  if (again) again.hidden = !answer.again;
  put(document.querySelector("[data-share-text]"), answer.text);
};
beginSharing();
draw();
box.begin();
keepForLater();

// Only a page from https, or from this very computer, may have a helper that opens it again without a network.
async function keepForLater() {
  if (!("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("/kept-pages-worker.js", { scope: "/shopping" });
    const worker = (await navigator.serviceWorker.ready).active;
    const files = performance.getEntriesByType("resource").map(one => one.name).filter(name => name.startsWith(location.origin));
    worker.postMessage([location.href, ...files.filter(name => !name.includes("/ticks"))]);
    put(document.querySelector("[data-offline]"),
      "Without a network this page keeps working and opens again on this device. What you check off is kept here and sent "
      + "later.");
  } catch (problem) {
    console.warn("This page is not kept for a reload without a network:", problem);
  }
}
