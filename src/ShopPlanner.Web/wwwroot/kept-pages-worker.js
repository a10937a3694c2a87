// Opens shopping lists and the bench again without a network, from what was there when they were opened last. With a
// network it stays out of the way: the newest page is asked for first.
const shelf = "shop-planner pages", patience = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", event => event.waitUntil(self.clients.claim()));

// A page that was open before there was a worker says what it loaded.
self.addEventListener("message", event => event.waitUntil(keep(event.data)));

async function keep(addresses) {
  const cache = await caches.open(shelf);
  await Promise.allSettled(addresses.map(address => cache.add(address)));
}

self.addEventListener("fetch", event => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(self.location.origin)) return;
  event.respondWith(request.mode === "navigate" ? newest(request) : kept(request));
});

async function newest(request) {
  const cache = await caches.open(shelf), known = await nearest(cache, new URL(request.url));
  const fresh = fetch(request).then(answer => {
    if (answer.ok) cache.put(request, answer.clone());
    return known && answer.status >= 500 ? known : answer;
  });
  if (!known) return fresh;
  const late = new Promise(done => setTimeout(() => done(known), patience));
  return Promise.race([fresh.catch(() => known), late]);
}

// The page itself, else the one above it: the bench's page of a plan holds the pages of all its boards.
async function nearest(cache, address) {
  for (let path = address.pathname; path.length > 1; path = path.slice(0, path.lastIndexOf("/"))) {
    const known = await cache.match(new URL(path, address), { ignoreSearch: true });
    if (known) return known;
  }
  return undefined;
}

async function kept(request) {
  const cache = await caches.open(shelf), known = await cache.match(request);
  const fresh = fetch(request).then(answer => {
    if (answer.ok) cache.put(request, answer.clone());
    return answer;
  });
  if (!known) return fresh;
  fresh.catch(() => known);
  return known;
}
