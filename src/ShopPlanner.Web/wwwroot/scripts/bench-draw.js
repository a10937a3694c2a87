// Draws the bench's page of a plan: each board, its cuts, and all cuts by setting, as they stand once everything is sent.
// The words are the server's; what changes with a mark is shown or hidden.
export const isAll = stock => stock.cuts.every(cut => stock.made.has(cut));

export function drawBoard(board, stock, cut, noun) {
  const own = board.querySelector(".bench-own"), isOpen = !stock.isFinished;
  if (!own) return undefined;
  for (const row of own.querySelectorAll("li[data-row]")) drawRow(row, stock, Number(row.dataset.row) === cut && isOpen, true);
  const end = own.querySelector("[data-before-end]");
  if (end) end.hidden = cut === undefined || !isOpen;
  const wanted = String(cut ?? "end");
  let shown;
  for (const panel of board.querySelectorAll("[data-panel]")) {
    panel.hidden = panel.dataset.panel !== wanted || stock.isFinishing;
    if (!panel.hidden) shown = panel;
  }
  drawFinishing(board, stock, noun);
  drawPicture(board, stock, isOpen ? cut : undefined);
  return shown?.dataset.heard;
}

function drawFinishing(board, stock, noun) {
  let note = board.querySelector("[data-finishing]");
  if (stock.isFinishing && !note) {
    note = document.createElement("section");
    note.className = "next-cut finished";
    note.dataset.finishing = "";
    note.innerHTML = "<p class='which good'></p><p class='gives'></p>";
    note.firstChild.textContent = `${noun(stock.number)} ${stock.number}: finished`;
    note.lastChild.textContent = "Saved on this tablet. Tags for the leftovers come from the shop's computer, once it can be "
      + "reached: until then write the size on each.";
    board.querySelector(".bench-now").append(note);
  }
  if (note) note.hidden = !stock.isFinishing;
}

function drawPicture(board, stock, cut) {
  for (const part of board.querySelectorAll("svg [data-mark]")) {
    const [kind, number] = part.dataset.mark.split("-"), n = Number(number);
    part.classList.toggle("now", kind === "freed" ? stock.made.has(n) : n === cut);
  }
}

function drawRow(row, stock, isNext, isHidden) {
  const isMade = stock.made.has(Number(row.dataset.row)), button = row.querySelector("button[data-cut]");
  row.className = isMade ? "made" : isNext ? "next" : "";
  if (!button) return;
  button.textContent = isMade ? "Undo" : "Done";
  button.setAttribute("aria-label", isMade ? button.dataset.undo : button.dataset.do);
  button.dataset.made = String(isMade);
  button.classList.toggle("quiet", isMade);
  button.hidden = (isNext && isHidden) || Boolean(stock.isFinishing);
}

export function drawRuns(root, stocks, here, next) {
  for (const all of root.querySelectorAll("[data-measure]")) {
    const stock = stocks.get(Number(all.dataset.measure));
    all.hidden = stock.isFinished || !isAll(stock);
  }
  for (const run of root.querySelectorAll("[data-runs]:not(template) .bench-run")) {
    let isDone = true;
    for (const row of run.querySelectorAll("li[data-row]")) {
      const stock = stocks.get(Number(row.dataset.stock)), cut = Number(row.dataset.row);
      isDone &&= stock.made.has(cut) || stock.isFinished;
      drawRow(row, stock, stock.number === here && cut === next && !stock.isFinished, false);
    }
    const sign = run.querySelector("[data-run-done]");
    if (sign.hidden !== isDone) continue;
    sign.hidden = !isDone;
    run.open = !isDone;
  }
}

export function drawHead(root, stocks, here, order, noun) {
  const find = selector => root.querySelector(selector);
  find("[data-board-name]").textContent = `${noun(here)} ${here} of ${stocks.size}`;
  find(".bench-head nav").hidden = order === "setting";
  const [first, second] = [here - 1, here + 1].map(number => stocks.has(number) ? number : undefined);
  find(".bench-head nav").replaceChildren(...[[first, "‹ ", ""], [second, "", " ›"]]
    .filter(([number]) => number).map(([number, before, after]) => link(root, number, before, after)));
  for (const all of root.querySelectorAll(".bench-switch a")) {
    const isBySetting = all.getAttribute("href").endsWith("/settings");
    if (isBySetting === (order === "setting")) all.setAttribute("aria-current", "page");
    else all.removeAttribute("aria-current");
  }
  let finished = 0;
  for (const one of root.querySelectorAll(".bench-all a")) {
    const number = Number(one.getAttribute("href").split("/").pop()), stock = stocks.get(number);
    if (stock.isFinished) finished++;
    one.textContent = number + (stock.isFinished ? " ✓" : stock.made.size > 0 ? " …" : "");
    one.setAttribute("aria-label", `${noun(number)} ${number}`
      + (stock.isFinished ? ", finished" : stock.made.size > 0 ? ", begun" : ""));
    one.classList.toggle("good", stock.isFinished);
    if (number === here && order === "board") one.setAttribute("aria-current", "page");
    else one.removeAttribute("aria-current");
  }
  find(".bench-all h2").textContent = `${finished} of ${stocks.size} finished`;
}

function link(root, number, before, after) {
  const made = document.createElement("a");
  made.className = "button";
  made.href = `${root.dataset.address}/${number}`;
  made.textContent = before + number + after;
  made.setAttribute("aria-label", `${number}, ${before ? "previous" : "next"}`);
  return made;
}
