// Shared by the tests of what is kept: what lies in the store as records, and its jobs.

import { control, until } from '../harness.mjs';
import { kept_keys } from '../kept.mjs';
import { go } from '../words.mjs';

/** Waits until the page says when it last stored. */
export async function all_saved(page) {
  await until('all is stored', () => page.getByText(/^Saved \d/).count());
}

/** Ids of the jobs that the store holds, by their journals. */
export async function job_ids(page) {
  const keys = await kept_keys(page);
  return [...new Set(keys.filter((key) => key.startsWith('journal/')).map((key) => key.split('/')[1]))];
}

/** Names the job, and waits until the page calls it so. */
export async function rename(page, name) {
  await go(page, 'Sheets');
  const field = control(page, 'textbox', 'Name of the job');
  await field.fill(name);
  await field.press('Enter');
  await until('the name stands', async () => (await job_name(page)) === name);
}

/** What the heading of the page calls the job. */
export async function job_name(page) {
  return page.getByRole('heading', { level: 1 }).first().textContent();
}

export async function to_jobs(page) {
  await go(page, 'Jobs');
}

/** Everything in the store, byte for byte, as one object of texts. */
export function whole_store(page) {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('treadle');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('kept').objectStore('kept');
          const keys = store.getAllKeys();
          const values = store.getAll();
          store.transaction.oncomplete = () => {
            opening.result.close();
            const text = (bytes) => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
            resolve(Object.fromEntries(keys.result.map((key, i) => [key, text(values.result[i])])));
          };
        };
      }),
  );
}
