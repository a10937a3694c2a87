// Light, dark, or as the system wishes. Kept in a cookie, so that the server draws the page right from the start.
const year = 365 * 24 * 3600;

export function choose(look) {
  if (look) document.documentElement.dataset.look = look;
  else delete document.documentElement.dataset.look;
  document.cookie = `shop-planner-look=${look ?? ""}; path=/; max-age=${look ? year : 0}; samesite=strict`;
}
