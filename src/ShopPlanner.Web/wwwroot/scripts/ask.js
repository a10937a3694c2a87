// Calls of the server by a script. Nobody waits for such a call, so a failure is told here: on the page, and in the console
// with its cause. What fails within the server's own work is shown by the server.
import { lineIsDown } from "./fields.js";

const open = new Set();

// What may be repeated does nothing twice: it is sent again after an outage that took its answer.
export function ask(owner, method, given = [], mayRepeat = false) {
  const call = { owner, method, given, mayRepeat };
  open.add(call);
  return send(call);
}

async function send(call) {
  try {
    await call.owner.invokeMethodAsync(call.method, ...call.given);
  } catch (problem) {
    tell(call.method, problem);
  }
  open.delete(call);
}

// While the line is down its own notice is there already.
function tell(method, problem) {
  console.error(`${method} was not done:`, problem);
  if (lineIsDown()) return;
  const notice = document.getElementById("blazor-error-ui");
  notice.style.display = "flex";
  notice.querySelector(".reload").onclick = event => {
    event.preventDefault();
    location.reload();
  };
}

document.addEventListener("shop-line", event => {
  if (event.detail !== "hide") return;
  for (const call of [...open]) {
    if (call.mayRepeat) send(call);
    else {
      open.delete(call);
      console.warn(`${call.method} has no answer: the connection broke. The page shows what was done.`);
    }
  }
});
