// The kill switch: put in place of sw.js when a version must go from every device that kept it.
//
// The next check of a page (at its start, and every four hours) takes this one. It waits for nobody,
// removes the files that were kept and then itself; jobs are elsewhere and stay. Leave it there until
// all devices have been seen, then put the new version's own sw.js back.

self.addEventListener('install', () => self.skipWaiting());
// A page asks every new worker what it is, and the old one at the same moment, which then is too busy
// to be replaced: once more when it is not.
self.addEventListener('message', (event) => event.waitUntil(
  new Promise((done) => setTimeout(done, 1000)).then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil((async () => {
  for (const name of await caches.keys())
    if (name.startsWith('treadle-')) await caches.delete(name);
  await self.registration.unregister();
})()));
