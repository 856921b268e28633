/**
 * The worker that keeps the shed screen open without a signal: the network first for that one page, the copy where there
 * is none; the program's own files from the copy first. It never touches what is recorded.
 */
const WORKER = `
const CACHE = 'stillroom-shed-1';
const PAGE = '/harvest';
self.addEventListener('install', (e) => e.waitUntil(keepPage().catch(() => undefined).then(() => self.skipWaiting())));
self.addEventListener('activate', (e) => e.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== 'GET' || url.origin !== location.origin) return;
  if (e.request.mode === 'navigate' && url.pathname === PAGE) e.respondWith(pageFirst(e.request));
  else if (url.pathname.startsWith('/_next/static/')) e.respondWith(copyFirst(e.request));
});
async function keepPage() {
  const response = await fetch(PAGE, { credentials: 'same-origin' });
  if (response.ok && !response.redirected) await keep(response);
}
async function keep(response) {
  const cache = await caches.open(CACHE);
  const html = await response.clone().text();
  await cache.put(PAGE, response);
  const files = [...new Set(html.match(/\\/_next\\/static\\/[^"'\\\\\\s)]+/g) || [])];
  await Promise.all(files.map(async (f) => (await cache.match(f)) || cache.add(f).catch(() => undefined)));
}
async function pageFirst(request) {
  try {
    const response = await fetch(request);
    if (response.ok && !response.redirected) keep(response.clone()).catch(() => undefined);
    return response;
  } catch (error) {
    const copy = await (await caches.open(CACHE)).match(PAGE);
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
