// Starts the live connection. A tablet sleeps and the Wi-Fi flaps: it is tried again for as long as the page is open, quickly at
// first.
import { begin } from "./fields.js";
import * as find from "./find.js";
import * as focus from "./focus.js";
import * as heading from "./heading.js";
import * as live from "./live.js";
import * as press from "./press.js";
import * as share from "./share.js";

const pause = attempt => attempt < 10 ? 500 : attempt < 60 ? 2000 : 5000;
const detail = event => event.detail;

begin();
press.begin();
focus.begin();
find.begin();
share.begin();
live.begin();
window.shopHeading = heading;
// The browser's event has another name than ours: under one name the framework would hand each event on twice.
Blazor.registerCustomEventType("typed", { browserEventName: "shop-typed", createEventArgs: detail });
Blazor.registerCustomEventType("command", { browserEventName: "shop-command", createEventArgs: detail });
const reconnectionOptions = { maxRetries: 1_000_000, retryIntervalMilliseconds: pause };
Blazor.start({ circuit: { configureSignalR: live.watch, reconnectionOptions } });

const notice = document.getElementById("components-reconnect-modal");
notice.addEventListener("components-reconnect-state-changed", event => {
  document.dispatchEvent(new CustomEvent("shop-line", { detail: event.detail.state }));
  // The server knows this page no more (it was started anew, or the pause was long): every page restores itself from its address.
  if (event.detail.state === "rejected") live.openAgain();
});
