/**
 * The worker that keeps the shed screen and the stall's cards open without a signal: the network first for those pages, the
 * copy where there is none (a jar's own page falls back to the stall's cards); the program's own files from the copy first.
 * It never touches what is recorded.
 */
const WORKER = `
const CACHE = 'stillroom-shed-2';
const PAGES = ['/harvest', '/stall'];
self.addEventListener('install', (e) => e.waitUntil(Promise.all(PAGES.map((p) => keepPage(p).catch(() => undefined))).then(() => self.skipWaiting())));
self.addEventListener('activate', (e) => e.waitUntil(dropOld().then(() => self.clients.claim())));
self.addEventListener('fetch', (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== 'GET' || url.origin !== location.origin) return;
  const page = url.pathname.startsWith('/jar/') ? '/stall' : url.pathname;
  if (e.request.mode === 'navigate' && PAGES.includes(page)) e.respondWith(pageFirst(e.request, page, url.pathname === page));
  else if (url.pathname.startsWith('/_next/static/')) e.respondWith(copyFirst(e.request));
});
async function dropOld() {
  const old = (await caches.keys()).filter((k) => k.startsWith('stillroom-') && k !== CACHE);
  await Promise.all(old.map((k) => caches.delete(k)));
}
async function keepPage(page) {
  const response = await fetch(page, { credentials: 'same-origin' });
  if (response.ok && !response.redirected) await keep(response, page);
}
async function keep(response, page) {
  const cache = await caches.open(CACHE);
  const html = await response.clone().text();
  await cache.put(page, response);
  const files = [...new Set(html.match(/\\/_next\\/static\\/[^"'\\\\\\s)]+/g) || [])];
  await Promise.all(files.map(async (f) => (await cache.match(f)) || cache.add(f).catch(() => undefined)));
}
async function pageFirst(request, page, isPage) {
  try {
    const response = await fetch(request);
    if (isPage && response.ok && !response.redirected) keep(response.clone(), page).catch(() => undefined);
    return response;
  } catch (error) {
    const copy = await (await caches.open(CACHE)).match(page);
    if (copy) return copy;
    throw error;
  }
}
async function copyFirst(request) {
  const copy = await caches.match(request);
  if (copy) return copy;
  const response = await fetch(request);
  if (response.ok) (await caches.open(CACHE)).put(request, response.clone()).catch(() => undefined);
  return response;
}
`;

export const dynamic = 'force-static';
export const GET = (): Response =>
  new Response(WORKER, { headers: { 'content-type': 'text/javascript; charset=utf-8', 'cache-control': 'no-cache' } });
