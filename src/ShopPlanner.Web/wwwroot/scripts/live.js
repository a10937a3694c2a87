// The framework heals a live connection that once stood, not one that failed while the page was opened: such a page would stay
// shut for good. Here it waits until the server answers, and is opened again. Nothing can have been typed into it.
const tries = "shop-openings", longestPause = 30_000;
let isWaiting = false;

const isLive = () => document.querySelector("fieldset.until-live:not([disabled])") !== null;
const wait = time => new Promise(done => setTimeout(done, time));

async function answers() {
  try {
    await fetch(location.href, { method: "HEAD", cache: "no-store" });
    return true;
  } catch {
    // No answer is the answer.
    return false;
  }
}

// Opens the page again once there is a server to open it from: before, the browser's own page of errors would stand in its place.
export async function openAgain(pause = 0) {
  if (isWaiting) return;
  isWaiting = true;
  await wait(pause);
  while (!await answers()) await wait(1000);
  location.reload();
}

// Where the server answers and the connection fails each time, the pauses grow.
function failed() {
  if (isWaiting || isLive()) return;
  const count = Number(sessionStorage.getItem(tries) ?? 0);
  sessionStorage.setItem(tries, String(count + 1));
  document.getElementById("components-reconnect-modal").classList.add("components-reconnect-show");
  document.dispatchEvent(new CustomEvent("shop-line", { detail: "show" }));
  openAgain(Math.min(500 * 2 ** count, longestPause));
}

function watched(connection) {
  const start = connection.start.bind(connection);
  connection.start = async () => {
    try {
      await start();
    } catch (problem) {
      failed();
      throw problem;
    }
  };
  connection.onclose(failed);
  return connection;
}

// Watches the connections that a builder of the framework makes.
export function watch(builder) {
  const build = builder.build.bind(builder);
  builder.build = () => watched(build());
}

export function begin() {
  addEventListener("pagehide", () => { if (isLive()) sessionStorage.removeItem(tries); });
}
