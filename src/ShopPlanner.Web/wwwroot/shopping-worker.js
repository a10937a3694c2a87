// Opens shopping lists again without a network, from what was there when they were opened last. With a network it stays out of
// the way: the newest page is asked for first.
const shelf = "shop-planner shopping", patience = 4000;

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
  const cache = await caches.open(shelf), known = await cache.match(request, { ignoreSearch: true });
  const fresh = fetch(request).then(answer => {
    if (answer.ok) cache.put(request, answer.clone());
    return answer;
  });
  if (!known) return fresh;
  const late = new Promise(done => setTimeout(() => done(known), patience));
  return Promise.race([fresh.catch(() => known), late]);
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
