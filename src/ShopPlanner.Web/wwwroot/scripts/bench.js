// A plan at the bench. What is marked is drawn at once and kept on this tablet (outbox.js); it is sent, in order, when the
// shop's computer can be reached (outbox-sender.js). What is drawn is what the server said last, and upon it what is not
// sent yet. Boards are copies that the page brought along, so that nothing here waits for the network.
import { Outbox } from "./outbox.js";
import { Sender } from "./outbox-sender.js";
import { drawBoard, drawHead, drawRuns, isAll } from "./bench-draw.js";
import { say } from "./bench-saved.js";
import * as tools from "./bench-tools.js";
import * as press from "./press.js";

const twice = 400;
const outbox = new Outbox();
let root, written, base, boards, here, order, sender, isStale = false;
const last = new Map();
const find = (selector, of = root) => of.querySelector(selector);

// The page as the server wrote it; again after it was fetched again.
function open(place) {
  root = place;
  boards = new Map();
  const state = JSON.parse(find("#bench-state").textContent);
  written = state;
  if (!base || state.at > base.at) base = state;
  const runs = find("template[data-runs]");
  here = Number(root.dataset.here);
  order = root.dataset.order;
  if (runs) find("[data-runs]:not(template)").replaceChildren(runs.content.cloneNode(true));
  tools.begin(find("[data-tools]"), draw);
}

// How every board stands once all is sent.
function ahead() {
  const stocks = new Map(base.stocks.map(one => [one.number, { ...one, made: new Set(one.made) }]));
  for (const one of outbox.waiting.filter(one => one.plan === base.plan && !one.say)) {
    const stock = stocks.get(one.stock);
    if (!stock) continue;
    if (one.kind === "cut") stock.made[one.done ? "add" : "delete"](one.cut);
    if (one.kind === "finish") Object.assign(stock, { isFinished: true, isFinishing: true, made: new Set(stock.cuts) });
  }
  return stocks;
}

const nextOf = stock => stock.cuts.find(cut => !stock.made.has(cut));
const noun = number => root.dataset.nouns.split(" ")[number - 1];

// The next cut in the order of settings: what a cut needs stands before it there.
function nextBySetting(stocks) {
  for (const row of root.querySelectorAll("[data-runs]:not(template) li[data-row]")) {
    const stock = stocks.get(Number(row.dataset.stock)), cut = Number(row.dataset.row);
    if (!stock.isFinished && !stock.made.has(cut)) return { number: stock.number, cut };
  }
  const open = [...stocks.values()].find(stock => !stock.isFinished) ?? stocks.get(here);
  return { number: open.number, cut: nextOf(open) };
}

const templateOf = number => find(`template[data-board="${number}"]`);

// Without its drawing where the plan is too long for one page: its cuts are marked all the same.
function boardOf(number) {
  if (!boards.has(number))
    boards.set(number, templateOf(number)?.content.cloneNode(true).firstElementChild ?? document.createElement("section"));
  return boards.get(number);
}

function draw() {
  say(find("[data-saved]"), outbox, sender, name);
  const place = find("[data-place]");
  if (!place) return;
  const stocks = ahead();
  let cut;
  if (order === "setting") ({ number: here, cut } = nextBySetting(stocks));
  const stock = stocks.get(here) ?? [...stocks.values()][0];
  here = stock.number;
  cut ??= nextOf(stock);
  root.dataset.order = order;
  find("[data-runs]:not(template)").hidden = order !== "setting";
  if (!find(":scope > .finish-here", place) && place.firstElementChild !== boardOf(here)) place.replaceChildren(boardOf(here));
  tools.read(drawBoard(boardOf(here), stock, cut, noun));
  if (order === "setting") drawRuns(root, stocks, here, cut);
  drawHead(root, stocks, here, order, noun);
}

const name = one => one.plan !== base.plan ? "an entry of another page"
  : one.kind === "finish" ? `${noun(one.stock).toLowerCase()} ${one.stock} finished`
  : `cut ${one.cut} of ${noun(one.stock).toLowerCase()} ${one.stock} ${one.done ? "done" : "not done"}`;

// One tap is one mark, though a gloved finger or a worn screen makes two of it. What comes to lie under the finger after a
// tap is not meant by it either.
function isTwice(event, target) {
  const area = target.closest(".bench-now") ? "now" : target.closest("li[data-row]");
  if (!area) return false;
  const since = event.timeStamp - (last.get(area) ?? -Infinity);
  if (since < twice) return true;
  if (target.matches("button[data-cut]")) last.set(area, event.timeStamp);
  return false;
}

function mark(button) {
  const { stock, cut } = button.dataset;
  const kept = outbox.add({
    kind: "cut", plan: base.plan, stock: Number(stock), cut: Number(cut), done: button.dataset.made !== "true" });
  draw();
  kept.then(() => sender.soon());
  const huge = boardOf(here).querySelector("[data-panel]:not([hidden]) .huge");
  if (button.matches(".huge") && document.activeElement === document.body) huge?.focus({ preventScroll: true });
}

function clicked(event) {
  const target = event.target.closest("a, button");
  if (!target || event.button > 0 || event.ctrlKey || event.metaKey || event.shiftKey) return;
  if (isTwice(event, target)) event.preventDefault();
  else if (target.matches("button[data-cut]")) {
    event.preventDefault();
    mark(target);
  } else if (target.matches("a[href]")) follow(event, target);
}

function follow(event, target) {
  const to = new URL(target.href);
  if (to.origin !== location.origin || (to.pathname === location.pathname && to.hash)) return;
  event.preventDefault();
  if (target.closest(".bench-switch")) tools.remember("bench order", restOf(to) === "settings" ? "setting" : "board");
  if (canShow(to)) show(to);
  else leave(() => location.assign(to));
}

function show(to) {
  history.pushState(null, "", to);
  find(".earlier")?.remove();
  route();
  scrollTo(0, 0);
}

const isOfPlan = to => to.pathname === root.dataset.address || to.pathname.startsWith(root.dataset.address + "/");
const restOf = to => to.pathname.slice(root.dataset.address.length + 1);
const isFinish = to => /^\d+\/finish$/.test(restOf(to));

// Whether this page has what the address shows: a board, the cuts by setting, the leftovers of a board that is all cut.
function canShow(to) {
  if (!isOfPlan(to) || !find("[data-place]")) return false;
  const rest = restOf(to), number = parseInt(rest, 10);
  if (isFinish(to))
    return Boolean(find(`template[data-finish="${number}"]`)) && (to.search !== "" || isAll(ahead().get(number)));
  return rest === "" || rest === "settings" || (/^\d+$/.test(rest) && Boolean(templateOf(number)));
}

// Shows what the address says: at the plan's own, the order that was chosen on this tablet.
function route() {
  const to = new URL(location.href), rest = restOf(to), number = parseInt(rest, 10);
  if (!canShow(to)) return;
  order = rest === "settings" || (rest === "" && tools.recall("bench order") === "setting") ? "setting" : "board";
  if (number) here = number;
  else if (order === "board") here = [...ahead().values()].find(one => !one.isFinished)?.number ?? base.stocks.length;
  find("[data-place]").replaceChildren();
  if (isFinish(to)) {
    const form = document.createElement("div");
    form.className = "finish-here";
    form.append(find(`template[data-finish="${number}"]`).content.cloneNode(true));
    find("[data-place]").append(form);
    propose(form, number);
  }
  draw();
  if (isStale) refresh();
}

// Where the shop's computer answers, it proposes tags for what is kept, and draws where each piece lies. What was begun stays.
async function propose(place, number) {
  const response = await fetch(`${root.dataset.address}/${number}/finish?all-made=true`).catch(() => null);
  if (!response?.ok) return;
  const form = new DOMParser().parseFromString(await response.text(), "text/html").querySelector("form.finish");
  if (form && place.isConnected && !place.contains(document.activeElement)) place.replaceChildren(...form.parentElement.children);
}

let isLeaving = false;

function submitted(event) {
  const form = event.target;
  if (form.matches("form.finish")) {
    event.preventDefault();
    finish(form, event.submitter);
  } else if (!isLeaving) {
    event.preventDefault();
    leave(() => {
      isLeaving = true;
      form.requestSubmit(event.submitter);
    });
  }
}

// The leftovers as measured: kept and sent as the marks are.
function finish(form, submitter) {
  const data = new FormData(form);
  if (submitter?.name) data.set(submitter.name, submitter.value);
  data.delete("__RequestVerificationToken");
  const fields = Object.fromEntries(data), stock = Number(fields.Number);
  const kept = outbox.add({ kind: "finish", plan: base.plan, stock, fields });
  show(new URL(`${root.dataset.address}/${fields.Next || stock}`, location.href));
  kept.then(() => sender.soon());
}

// To a page that only the server has: after all is sent, and only where it answers. This page would be lost without a
// network.
async function leave(go) {
  if (await sender.drained(3000)) return go();
  sender.trouble = "What you pressed needs the shop's computer: press it again when there is a connection.";
  draw();
}

function heard(answer) {
  if (!answer.plan) return;
  base = answer.plan;
  outbox.remember("plan " + base.plan, base);
  if (written.form !== base.form) refresh();
}

// Other boards are finished than the page shows, here or on another tablet, or the plan has changed: the page is fetched
// again. What is being typed goes first.
async function refresh() {
  isStale = true;
  if (find(".finish-here")) return;
  try {
    const known = new Set(written.stocks.filter(one => one.isFinished).map(one => one.number));
    const finished = base.stocks.filter(one => one.isFinished && !known.has(one.number)).map(one => one.number);
    const search = finished.length === 1 && finished[0] !== here ? `?finished=${finished[0]}` : "";
    const response = await fetch(`${root.dataset.address}/${order === "setting" ? "settings" : here}${search}`);
    const page = new DOMParser().parseFromString(await response.text(), "text/html").getElementById("bench");
    if (!response.ok || page?.dataset.plan !== root.dataset.plan) return;
    // Measuring may have begun meanwhile.
    if (find(".finish-here")) return;
    isStale = false;
    const place = document.adoptNode(page);
    root.replaceWith(place);
    const [number, way] = [here, order];
    open(place);
    [here, order] = [number, way];
    if (find("[data-place]")) find("[data-place]").replaceChildren();
    draw();
  } catch (problem) {
    console.info("The page is fetched again later:", problem.message);
  }
}

press.begin();
open(document.getElementById("bench"));
sender = new Sender(outbox, { plan: base.plan });
outbox.changed = draw;
Object.assign(sender, { heard, told: draw });
document.addEventListener("click", clicked);
document.addEventListener("submit", submitted);
addEventListener("popstate", route);
draw();
await outbox.open();
const kept = await outbox.recall("plan " + base.plan);
if (kept?.at > base.at) base = kept;
route();
draw();
sender.begin();
tools.keepForLater();
