// A project's steps at the bench. What is marked or noted is drawn at once and kept on this tablet (outbox.js), and sent
// when the shop's computer can be reached. Waits can be timed: a timer counts on while the tablet sleeps.
import { Outbox } from "./outbox.js";
import { Sender } from "./outbox-sender.js";
import { say } from "./bench-saved.js";
import * as tools from "./bench-tools.js";

const twice = 400, minute = 60_000;
const root = document.getElementById("bench-steps"), { project } = root.dataset;
const steps = [...root.querySelectorAll("li[data-step]")];
const outbox = new Outbox(), sender = new Sender(outbox, { project });
const last = new Map();
let base = JSON.parse(document.getElementById("bench-state").textContent);

function ahead() {
  const marks = new Map(Object.entries(base)), notes = new Map();
  for (const one of outbox.waiting.filter(one => one.project === project && !one.say)) {
    if (one.kind === "step") marks.set(one.step, one.done ? "done" : "open");
    if (one.kind === "note") notes.set(one.step, one.text);
  }
  return { marks, notes };
}

function draw() {
  say(root.querySelector("[data-saved]"), outbox, sender, name);
  const { marks, notes } = ahead(), next = steps.find(step => marks.get(step.dataset.step) === "open");
  for (const step of steps) drawStep(step, marks.get(step.dataset.step) ?? "open", step === next, notes);
  const done = steps.filter(step => marks.get(step.dataset.step) !== "open").length;
  root.querySelector("[data-done-words]").textContent = `${done} of ${steps.length} step${steps.length === 1 ? "" : "s"} done`;
  if (next) tools.read(next.dataset.heard);
}

function drawStep(step, mark, isNext, notes) {
  step.classList.toggle("open", mark === "open");
  step.classList.toggle("done", mark !== "open");
  const button = step.querySelector("[data-mark-step]");
  if (button) {
    button.textContent = mark === "done" ? "Undo" : "Done";
    button.setAttribute("aria-label", `${button.textContent}: ${step.dataset.title}`);
    button.dataset.made = String(mark === "done");
    button.classList.toggle("first", isNext);
    button.classList.toggle("huge", isNext);
  }
  if (!notes.has(step.dataset.step)) return;
  const shown = step.querySelector("[data-note-shown]"), text = notes.get(step.dataset.step);
  shown.hidden = text === "";
  shown.querySelector("span").textContent = text;
}

const titleOf = id => steps.find(step => step.dataset.step === id)?.dataset.title ?? "a step that is no longer there";
const name = one => one.kind === "step" ? `${titleOf(one.step)} ${one.done ? "done" : "not done"}`
  : one.kind === "note" ? `note on ${titleOf(one.step)}` : "an entry of another page";

function add(command) {
  const kept = outbox.add({ ...command, project });
  draw();
  kept.then(() => sender.soon());
}

function clicked(event) {
  const button = event.target.closest("button"), step = button?.closest("li[data-step]");
  if (!step) return;
  if (button.matches("[data-mark-step]")) {
    event.preventDefault();
    // One tap is one mark, though a gloved finger makes two of it; and the next step's button may lie where this one lay.
    if (event.timeStamp - (last.get("any") ?? -Infinity) < twice) return;
    last.set("any", event.timeStamp);
    add({ kind: "step", step: step.dataset.step, done: button.dataset.made !== "true" });
  } else if (button.matches("[data-start]")) startTimer(step);
  else if (button.matches("[data-save-note]")) {
    add({ kind: "note", step: step.dataset.step, text: step.querySelector(".bench-note textarea").value.trim() });
    step.querySelector(".bench-note").open = false;
  }
}

const timerOf = step => `timer ${project} ${step.dataset.step}`;

function startTimer(step) {
  const timer = step.querySelector("[data-timer]");
  tools.remember(timerOf(step), tools.recall(timerOf(step)) ? "" : String(Date.now() + Number(timer.dataset.timer) * minute));
  drawTimers();
}

function drawTimers() {
  for (const timer of root.querySelectorAll("[data-timer]")) {
    const step = timer.closest("li[data-step]"), end = Number(tools.recall(timerOf(step)) || 0);
    const button = timer.querySelector("[data-start]"), left = Math.ceil((end - Date.now()) / 1000);
    button.dataset.text ??= button.textContent;
    button.textContent = end ? "Stop timer" : button.dataset.text;
    timer.querySelector("[data-left]").textContent = !end ? "" : left > 0 ? `${words(left)} left` : "The time is up.";
    if (!end || left > 0 || timer.dataset.said) continue;
    timer.dataset.said = "yes";
    tools.read(`The time is up: ${step.dataset.title}`);
  }
}

function words(seconds) {
  const hours = Math.floor(seconds / 3600), minutes = Math.floor(seconds / 60) % 60;
  if (hours) return `${hours} h ${minutes} min`;
  return minutes ? `${minutes} min ${seconds % 60} s` : `${seconds} s`;
}

for (const step of steps) {
  const form = root.querySelector("template[data-note-form]").content.cloneNode(true);
  form.querySelector("textarea").value = step.querySelector("[data-note-shown] span").textContent;
  form.querySelector("summary").setAttribute("aria-label", `Write a note: ${step.dataset.title}`);
  step.querySelector(".bench-step-open").append(form);
}
for (const timer of root.querySelectorAll("[data-timer]")) timer.hidden = false;
tools.begin(root.querySelector("[data-tools]"), draw);
outbox.changed = draw;
sender.told = draw;
sender.heard = answer => {
  if (!answer.steps) return;
  base = answer.steps;
  outbox.remember("steps " + project, base);
  draw();
};
document.addEventListener("click", clicked);
draw();
await outbox.open();
draw();
drawTimers();
setInterval(drawTimers, 1000);
sender.begin();
tools.keepForLater();
