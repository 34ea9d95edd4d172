// Keeps one whole build of the page on this device and answers from it, with and without a network.
//
// A build is kept whole or not at all, under a cache of its own; no answer ever mixes two. A new
// build waits until the page says `skipWaiting`. What is not of the build (shelf.json and what it
// lists, build.json, the one-file copy) goes to the network and is never kept: a shelf is the word
// of its host now, and an old copy would offer what was withdrawn.
//
// Words from a page, version 1: { treadle: 1, … }
//   ask: 'state'       answers { build, complete } on the port that comes with it
//   do: 'skipWaiting'  after every tab has stored what it had
//   do: 'claim'        by a page of this very build that nobody serves yet

const { id, files } = TREADLE_BUILD; // files: [address, sum] of all, './' is the page itself
const k_prefix = 'treadle-';
const k_cache = k_prefix + id;
const k_older = './older'; // laid down last: which caches there were before; no file has this name
const names = new Set(files.map(([name]) => name));

async function complete() {
  if (!(await caches.has(k_cache))) return false;
  const kept = await (await caches.open(k_cache)).keys();
  return kept.length === files.length + 1;
}

async function fetched([name, integrity]) {
  const answer = await fetch(name, { integrity, cache: 'no-cache', credentials: 'same-origin' });
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  // A page may not be given an answer that was sent on from elsewhere.
  const whole = answer.redirected ? new Response(await answer.blob(), { headers: answer.headers }) : answer;
  return [name, whole];
}

/** All or nothing: files are laid down only once every one of them is here and has its sum. */
async function fill() {
  if (await complete()) return; // another worker of the same build did it
  const older = (await caches.keys()).filter((name) => name.startsWith(k_prefix) && name !== k_cache);
  await caches.delete(k_cache);
  try {
    const answers = await Promise.all(files.map(fetched));
    const cache = await caches.open(k_cache);
    await Promise.all(answers.map(([name, answer]) => cache.put(name, answer)));
    await cache.put(k_older, new Response(JSON.stringify(older)));
  } catch (error) {
    await caches.delete(k_cache);
    throw error;
  }
}

/** Only what was there before this build: a still newer one may be filling its own. */
async function drop_older() {
  const list = await (await caches.open(k_cache)).match(k_older);
  for (const name of list ? await list.json() : []) await caches.delete(name);
}

async function state() {
  // A browser short of room may have taken the files; the host may still have them.
  if (!(await complete())) await fill().catch(() => {});
  return { build: id, complete: await complete() };
}

/** The name of a file of this build that is asked for, or nothing. */
function asked_for(request) {
  const scope = self.registration.scope;
  const url = new URL(request.url);
  url.search = url.hash = '';
  if (request.method !== 'GET' || !url.href.startsWith(scope)) return undefined;
  const name = url.href.slice(scope.length);
  if (name === '' || name === 'index.html') return request.mode === 'navigate' ? './' : undefined;
  return names.has(name) ? name : undefined;
}

async function answer(name, request) {
  const kept = await caches.open(k_cache).then((cache) => cache.match(name, { ignoreVary: true }))
    .catch(() => undefined);
  return kept ?? fetch(request);
}

/** The host's shelf; without the host there is none, and that is no fault. */
async function shelf(request) {
  return fetch(request).catch(() =>
    new Response('{"format":"treadle-shelf","version":1,"entries":[]}', { headers: { 'content-type': 'application/json' } }));
}

self.addEventListener('install', (event) => event.waitUntil(fill()));
self.addEventListener('activate', (event) => event.waitUntil(drop_older()));
self.addEventListener('fetch', (event) => {
  const name = asked_for(event.request);
  if (name) event.respondWith(answer(name, event.request));
  else if (event.request.url.split('?')[0] === `${self.registration.scope}shelf.json`)
    event.respondWith(shelf(event.request));
});
self.addEventListener('message', (event) => {
  const words = event.data;
  if (!words || words.treadle !== 1) return;
  if (words.ask === 'state')
    event.waitUntil(state().then((found) => event.ports[0].postMessage(found)));
  if (words.do === 'skipWaiting') self.skipWaiting();
  if (words.do === 'claim') event.waitUntil(self.clients.claim());
});
