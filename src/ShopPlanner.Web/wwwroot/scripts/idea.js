// The idea page's hand: sliders that redraw while they move, parts that are picked in the drawing. The server works everything out.
const ranges = root => [...root.querySelectorAll("input[type=range][data-at]")];

export function attach(root, owner) {
  // A slider that a finger holds, or whose last place the server has not seen yet, is not moved from here.
  let held = null, slid = null;
  const follow = () => ranges(root).forEach(range => { if (range !== held && range !== slid) range.value = range.dataset.at; });
  const slide = latest((name, at) => owner.invokeMethodAsync("Slide", name, at), () => {
    slid = null;
    follow();
  });

  root.addEventListener("input", event => {
    const range = event.target;
    if (!range.dataset.at) return;
    held = slid = range;
    slide(range.dataset.dimension, Number(range.value));
  });
  root.addEventListener("change", event => { if (event.target === held) held = null; });
  root.addEventListener("click", event => {
    const mark = event.target.closest(".piece-picture [data-mark]")?.dataset.mark;
    if (mark) owner.invokeMethodAsync("Pick", mark).catch(broken);
  });
  new MutationObserver(follow).observe(root, { subtree: true, attributes: true, attributeFilter: ["data-at", "min", "max"], childList: true });
  follow();
}

// One question on its way at a time, asked at a frame of the screen; of what happens meanwhile only the last is asked.
function latest(ask, rest) {
  let next = null, busy = false;
  const run = async () => {
    busy = true;
    while (next) {
      await new Promise(requestAnimationFrame);
      const given = next;
      next = null;
      await ask(...given).catch(broken);
    }
    busy = false;
    rest();
  };
  return (...given) => {
    next = given;
    if (!busy) run();
  };
}

// The line to the server is down: the page says so by itself, and asks again when it stands.
function broken() {}
