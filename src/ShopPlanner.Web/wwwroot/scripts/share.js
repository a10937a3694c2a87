// A list as a text: handed to the system's own sharing where there is one, else copied; or printed.
export function begin() {
  document.addEventListener("click", event => {
    const button = event.target.closest?.("[data-share]");
    if (button) share(button);
  });
}

async function share(button) {
  const place = button.closest("section, main"), text = place.querySelector("[data-share-text]").textContent;
  const say = words => place.querySelector("[data-share-said]").textContent = words;
  say("");
  if (button.dataset.share === "print") return window.print();
  try {
    if (button.dataset.share === "send" && navigator.share) await navigator.share({ text });
    else {
      await copy(text);
      say("Copied. Paste it into a message.");
    }
  } catch (problem) {
    // Whoever closed the system's own dialog knows that nothing was sent.
    if (problem.name !== "AbortError") say(`Not copied (${problem.name}). Print the list instead.`);
  }
}

// On plain http to another computer there is no clipboard to write to, but what is selected can be copied.
async function copy(text) {
  if (navigator.clipboard) return navigator.clipboard.writeText(text);
  const area = document.createElement("textarea");
  area.value = text;
  area.style.position = "fixed";
  document.body.append(area);
  area.select();
  const isDone = document.execCommand("copy");
  area.remove();
  if (!isDone) throw new DOMException("copying was refused", "NotAllowedError");
}
