// Keeps the workbench itself in the browser, so that it opens without a network. Jobs at work are kept elsewhere, by
// the page; what else the server answers is never kept here.
const shelf = 'fettle-page-1';
const page = '/index.html';

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(shelf)
      .then((cache) => cache.add(page))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

const isAsset = ({ pathname }) =>
  pathname.startsWith('/assets/') || /^\/[\w-]+\.(?:svg|webmanifest)$/.test(pathname);
const isRoom = (request, { pathname }) =>
  request.mode === 'navigate' && !/^\/(?:api|plain|owner|attachments|sign-|assets)/.test(pathname);

/** What has its own name for each content is the same for ever. */
const keptOrFetched = async (request) => {
  const cache = await caches.open(shelf);
  const kept = await cache.match(request);
  if (kept !== undefined) return kept;
  const fetched = await fetch(request);
  if (fetched.ok) await cache.put(request, fetched.clone());
  return fetched;
};

/** The newest page where the server answers, else the one that was kept. */
const fetchedOrKept = async (request) => {
  const cache = await caches.open(shelf);
  try {
    const fetched = await fetch(request);
    // A sign-in that comes in between is no room.
    if (fetched.ok && !fetched.redirected) await cache.put(page, fetched.clone());
    return fetched;
  } catch {
    return (await cache.match(page)) ?? Response.error();
  }
};

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== 'GET' || address.origin !== self.location.origin) return;
  if (isAsset(address)) event.respondWith(keptOrFetched(request));
  else if (isRoom(request, address)) event.respondWith(fetchedOrKept(request));
});
