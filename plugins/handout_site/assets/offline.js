// Keeps handouts for use without network. The build writes VERSION, KEPT (addresses of files whose
// names hold a hash of their content) and NOT_KEPT (the page for what is not kept) before this text.
//
// A new version takes over only once all its files are fetched: until then, and while a page of
// the old one is open, the old one goes on. Nothing is deleted that a kept page still needs.

const CACHE = `handouts-${VERSION}`;
const ROOT = new URL("./", self.location);
const HASHED = /-[0-9a-f]{12}[/.]/;
const kept = new Set(KEPT.map((address) => new URL(address, ROOT).href));

self.addEventListener("install", (event) => event.waitUntil(fetchWhole()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("message", (event) => {
  const addresses = Array.isArray(event.data?.keep) ? event.data.keep : [];
  event.waitUntil(keepAll(addresses));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(ROOT.href)) return;
  if (kept.has(plain(request.url))) event.respondWith(fromCacheFirst(request));
  else event.respondWith(fromNetworkFirst(event));
});

// An address without what a reader has written in it: that is never sent, nor kept.
function plain(address) {
  const url = new URL(address);
  url.search = "";
  url.hash = "";
  return url.href;
}

// Every file of this version, and the pages that the version before has kept.
async function fetchWhole() {
  const cache = await caches.open(CACHE);
  await Promise.all([...kept].map((address) => fetchKept(cache, address)));
  await keepAll(await pagesOfOlderVersions());
}

// A file whose name holds its hash need not be fetched twice; but that it was missing once says
// nothing about now.
async function fetchKept(cache, address) {
  let response = await caches.match(address);
  response ??= await fetch(address, { cache: "force-cache" });
  if (!response.ok) response = await fetch(address, { cache: "reload" });
  if (!response.ok) throw new Error(`${response.status} for ${address}`);
  await cache.put(address, response);
}

async function keepAll(addresses) {
  const cache = await caches.open(CACHE);
  const own = addresses.filter((address) => String(address).startsWith(ROOT.href)).map(plain);
  await Promise.all(
    [...new Set(own)].map(async (address) => {
      if (await cache.match(address)) return;
      const response = await fetch(address, { cache: "no-cache" }).catch(() => null);
      if (response?.ok) await cache.put(address, response);
    }),
  );
}

async function pagesOfOlderVersions() {
  const addresses = [];
  for (const name of await olderVersions()) {
    const requests = await (await caches.open(name)).keys();
    addresses.push(...requests.map(({ url }) => url));
  }
  return addresses.filter((address) => !HASHED.test(address));
}

async function olderVersions() {
  const names = await caches.keys();
  return names.filter((name) => name.startsWith("handouts-") && name !== CACHE);
}

async function takeOver() {
  await keepAll(await pagesOfOlderVersions());
  for (const name of await olderVersions()) await caches.delete(name);
  await self.clients.claim();
}

async function fromCacheFirst(request) {
  return (await caches.match(plain(request.url))) ?? fetch(request);
}

async function fromNetworkFirst(event) {
  const { request } = event;
  const address = plain(request.url);
  const reading = request.mode === "navigate";
  try {
    const response = await (reading ? fetch(address, { cache: "no-cache" }) : fetch(request));
    if (response.redirected && reading) return Response.redirect(response.url);
    if (response.ok) event.waitUntil(put(address, response.clone()));
    // A new response has no address of its own, so the page keeps the one with her choices.
    return reading ? new Response(response.body, response) : response;
  } catch (error) {
    const there = await caches.match(address);
    if (there) return there;
    if (reading) return notKept();
    throw error;
  }
}

// What stands at an address that was never opened while there is no network: which pages are kept.
async function notKept() {
  const cache = await caches.open(CACHE);
  const pages = [];
  for (const { url } of await cache.keys()) {
    const title = url.startsWith(ROOT.href) && (await titleOf(await cache.match(url)));
    if (title) pages.push(`<li><a href="${url}">${title}</a></li>`);
  }
  return new Response(NOT_KEPT.replace("<!-- kept pages -->", () => pages.join("")), {
    status: 503,
    headers: {
      "Content-Type": "text/html; charset=utf-8",
      "Content-Security-Policy": "default-src 'none'; style-src 'unsafe-inline'",
    },
  });
}

// The title of a kept page, escaped as it stands there; nothing for what is no page.
async function titleOf(response) {
  if (!response.headers.get("Content-Type")?.startsWith("text/html")) return "";
  const [, title] = /<title>([^<]*)<\/title>/.exec(await response.text()) ?? [];
  return title ?? "";
}

async function put(address, response) {
  await (await caches.open(CACHE)).put(address, response);
}
