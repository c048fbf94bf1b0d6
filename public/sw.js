// Keeps one whole build of Plugwary for use without a network, and replaces it by a newer one only
// when the page says so. The build and its files are filled in by `cargo xtask stamp`.
const BUILD = 'development';
const FILES = [];

const OURS = 'plugwary-build-';
const CACHE = OURS + BUILD;
const PAGE = '/index.html';

self.addEventListener('install', (event) => event.waitUntil(fill()));

async function fill() {
  try {
    const cache = await caches.open(CACHE);
    // The fingerprint keeps files of another build out, also when a new one is put on the host this very moment.
    await cache.addAll(FILES.map(([file, integrity]) => new Request(file, { cache: 'reload', integrity })));
  } catch (trouble) {
    await caches.delete(CACHE);
    throw trouble;
  }
}

self.addEventListener('activate', (event) => event.waitUntil(takeOver()));

async function takeOver() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
}

self.addEventListener('message', (event) => {
  if (event.data === 'skip-waiting') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== 'GET' || address.origin !== self.location.origin) return;
  // A page of its own, such as the page of limits, is one of the files; every other address that is gone to is a screen of the app.
  const isScreen = request.mode === 'navigate' && !FILES.some(([file]) => file === address.pathname);
  event.respondWith(answer(request, isScreen ? PAGE : address.pathname));
});

// Nothing is added to the cache here: it holds the files of the build and no others.
async function answer(request, file) {
  const cache = await caches.open(CACHE);
  return (await cache.match(file, { ignoreVary: true })) ?? fetch(request);
}
