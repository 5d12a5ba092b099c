// Keeps one whole build of the app for work without a network. The build stamps the two constants.
// One cache a build, so files of two builds never mix; a new build waits until the app asks for it.
const VERSION = "VERSION";
const FILES = ["FILES"];
const PREFIX = `yeanling ${registration.scope} `;
const CACHE = PREFIX + VERSION;
// The files that are named by their content; the page of this build loads them, and that of no other build does.
const NAMED = FILES.filter((file) => /-[0-9a-f]{16}(_bg)?\.[a-z]+$/.test(file));

// All files or none: one that fails, or comes as an error page, fails the install, and the old build stays.
async function install() {
  // A build that was taken back may still be in use: what it keeps is not touched.
  const known = await caches.has(CACHE);
  if (known && (await ready())) return;
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(FILES.map(async (file) => {
      const answer = await fetch(file, { cache: "reload" });
      const html = (answer.headers.get("content-type") ?? "").startsWith("text/html");
      if (!answer.ok || answer.redirected || html !== (file === "./")) throw new Error(`${file}: ${answer.status}`);
      const page = html ? await answer.clone().text() : "";
      if (html && !NAMED.every((name) => page.includes(name))) throw new Error("a page of another build");
      await cache.put(file, answer);
    }));
  } catch (error) {
    if (!known) await caches.delete(CACHE);
    throw error;
  }
}

async function activate() {
  const old = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await clients.claim();
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept) return kept;
  return (request.mode === "navigate" && (await cache.match("./"))) || fetch(request);
}

// A file that the phone shares to the app waits in a cache of its own until Hand over takes it; no network is asked.
const SHARED = "yeanling-shared";

async function take(request) {
  const file = (await request.formData().catch(() => null))?.get("book");
  if (file instanceof Blob) await (await caches.open(SHARED)).put("./shared-book", new Response(file));
  return Response.redirect("./#/share", 303);
}

async function ready() {
  const cache = await caches.open(CACHE);
  return (await Promise.all(FILES.map((file) => cache.match(file)))).every(Boolean);
}

addEventListener("install", (event) => event.waitUntil(install()));
addEventListener("activate", (event) => event.waitUntil(activate()));
addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(registration.scope)) event.respondWith(answer(request));
  if (request.method === "POST" && request.url === `${registration.scope}share`) event.respondWith(take(request));
});
addEventListener("message", (event) => {
  const { data, ports } = event;
  if (data?.type === "skip-waiting") event.waitUntil(skipWaiting());
  if (data?.type === "ready?") {
    event.waitUntil(ready().then((ready) => ports[0]?.postMessage({ type: "ready", ready, version: VERSION })));
  }
});
