// What this tablet does at the bench: reads the next step aloud, lies on the left-handed side, looks bright, stays awake,
// and opens the page without a network where the connection allows it. Each choice is kept by this browser.
import { choose } from "./look.js";

const worker = "/kept-pages-worker.js";

export function recall(key) {
  try {
    return localStorage.getItem("shop-planner " + key);
  } catch {
    // A browser that keeps nothing begins as usual each time.
    return null;
  }
}

export function remember(key, value) {
  try {
    localStorage.setItem("shop-planner " + key, value);
  } catch (problem) {
    console.warn("The choice holds for this page only:", problem);
  }
}

let isAloud = false, spoken = "", keptWords = "", timer;

// Reads a text, when reading aloud is on and it is another text than the last.
export function read(text) {
  if (!isAloud || !text || text === spoken) return;
  spoken = text;
  clearTimeout(timer);
  // What is passed over quickly is not worth hearing.
  timer = setTimeout(() => {
    speechSynthesis.cancel();
    speechSynthesis.speak(Object.assign(new SpeechSynthesisUtterance(text), { lang: "en-US" }));
  }, 250);
}

export function begin(box, changed) {
  if (!box) return;
  box.hidden = false;
  box.querySelector("[data-kept]").textContent = keptWords;
  const aloud = box.querySelector("[data-tool=aloud]");
  aloud.hidden = !("speechSynthesis" in window);
  lie(recall("bench hand") === "left");
  box.addEventListener("click", event => {
    const tool = event.target.closest("[data-tool]");
    if (tool) press(tool, changed);
    show(box);
  });
  show(box);
}

function press(tool, changed) {
  if (tool.dataset.tool === "look") choose(tool.dataset.look || null);
  if (tool.dataset.tool === "left") {
    lie(!isLeft());
    remember("bench hand", isLeft() ? "left" : "right");
  }
  if (tool.dataset.tool === "aloud") {
    isAloud = !isAloud;
    spoken = "";
    if (!isAloud) speechSynthesis.cancel();
    changed();
  }
}

const isLeft = () => document.documentElement.dataset.hand === "left";

function lie(left) {
  if (left) document.documentElement.dataset.hand = "left";
  else delete document.documentElement.dataset.hand;
}

function show(box) {
  const look = document.documentElement.dataset.look ?? "";
  for (const tool of box.querySelectorAll("[data-tool]")) {
    const { tool: kind } = tool.dataset;
    const isOn = kind === "look" ? (tool.dataset.look ?? "") === look : kind === "left" ? isLeft() : isAloud;
    tool.setAttribute("aria-pressed", String(isOn));
  }
}

// Only a page from https, or from this very computer, may be opened again without a network and keep the screen awake.
export async function keepForLater() {
  if (!("serviceWorker" in navigator)) {
    tell("Keep this page open: it works on without a network, and marks are saved on this tablet. Once it is closed, it opens "
      + "again only with the network, and then sends what was saved.");
    return;
  }
  stayAwake();
  document.addEventListener("visibilitychange", stayAwake);
  try {
    await navigator.serviceWorker.register(worker, { scope: "/bench" });
    const ready = (await navigator.serviceWorker.ready).active;
    const files = performance.getEntriesByType("resource").map(one => one.name)
      .filter(one => one.startsWith(location.origin) && !one.endsWith("/bench/commands"));
    ready.postMessage([location.href, ...files]);
    await navigator.storage?.persist?.();
    tell("This page opens again on this tablet without a network too. Marks are saved here and sent later. The screen stays on "
      + "while the page is shown.");
  } catch (problem) {
    tell("Keep this page open: this browser doesn't open it again without a network.");
    console.warn("This page is not kept for a reload without a network:", problem);
  }
}

function tell(words) {
  keptWords = words;
  const place = document.querySelector("[data-kept]");
  if (place) place.textContent = words;
}

async function stayAwake() {
  if (document.hidden || !("wakeLock" in navigator)) return;
  try {
    await navigator.wakeLock.request("screen");
  } catch (problem) {
    // A low battery, say: the screen goes dark as on any page.
    console.info("The screen is not kept awake:", problem.name);
  }
}
