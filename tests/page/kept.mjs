// The page's own store, read and written from outside, as a fault or another page would.

/** What lies under `key` as text, or null. With `text`: puts it there. */
export function kept(page, key, text) {
  return page.evaluate(
    ([at, words]) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('treadle', 1);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('kept', 'readwrite').objectStore('kept');
          const asked = words === null ? store.get(at) : store.put(new TextEncoder().encode(words), at);
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            const none = asked.result === undefined || words !== null;
            resolve(none ? null : new TextDecoder().decode(asked.result));
          };
        };
      }),
    [key, text ?? null],
  );
}

/** All keys, in their order. */
export function kept_keys(page) {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('treadle', 1);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('kept').objectStore('kept').getAllKeys();
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
  );
}

/** Everything that is kept of the job's history, one record after the other. */
export async function kept_history(page) {
  const keys = (await kept_keys(page)).filter((key) => key.startsWith('journal/'));
  return Promise.all(keys.map(async (key) => ({ key, text: await kept(page, key) })));
}
