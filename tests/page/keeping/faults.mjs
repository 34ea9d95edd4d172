// The store breaks in every way that is known of browsers: nothing is lost, and it is told in words.

import assert from 'node:assert/strict';

import { control, open, ready, said, test, until } from '../harness.mjs';
import { kept, kept_keys } from '../kept.mjs';
import { accept_notice, find, go, place, things } from '../words.mjs';
import { all_saved, job_ids, job_name, rename, to_jobs, whole_store } from './stored.mjs';

async function named(page, ...names) {
  await open(page);
  await accept_notice(page);
  for (const name of names) {
    await rename(page, name);
    await all_saved(page);
  }
}

async function again(page) {
  await page.reload();
  await ready(page);
}

const keys_of = async (page, kind) => (await kept_keys(page)).filter((key) => key.includes(kind));

async function damage(page, key) {
  await kept(page, key, (await kept(page, key)).replace('"', '\u00a7'));
}

test('a damaged snapshot is passed over for another one, with nothing lost', {}, async (page) => {
  await named(page, 'One', 'Two');
  const bases = await until('two snapshots', async () => {
    const found = await keys_of(page, '/base/');
    return found.length === 2 && found;
  });
  for (const base of bases) {
    const sound = await kept(page, base);
    await damage(page, base);
    await again(page);
    await until('the job', async () => (await job_name(page)) === 'Two');
    await until('it is told', async () => /damaged; the job itself is whole/.test(await said(page)));
    await kept(page, base, sound);
  }
});

test('a damaged record in the middle costs nothing when a snapshot follows it', {}, async (page) => {
  await named(page, 'One', 'Two');
  const field = control(page, 'textbox', 'Note');
  for (let i = 0; i < 55; ++i) {
    await field.fill(`Note ${i}`);
    await field.press('Enter');
    await until('the note', async () => (await field.inputValue()) === `Note ${i}`);
  }
  await until('a later snapshot', async () => (await keys_of(page, '/base/')).length >= 3);
  await all_saved(page);
  const steps = await keys_of(page, '/step/');
  await damage(page, steps[10]);
  await again(page);
  await until('the job', async () => (await job_name(page)) === 'Two');
  await go(page, 'Sheets');
  assert.equal(await field.inputValue(), 'Note 54');
  await until('it is told', async () => /damaged; the job itself is whole/.test(await said(page)));
  await rename(page, 'Three');
  await all_saved(page);
  assert.equal((await keys_of(page, 'aside/')).length > 0, true);
  await again(page);
  assert.doesNotMatch(await said(page), /damaged/);
});

for (const [what, harm] of [
  ['damaged', (page, key) => damage(page, key)],
  ['missing', (page, key) => remove(page, key)],
])
  test(`a ${what} record without a later snapshot ends the job before it, and all stays`, {}, async (page) => {
    await named(page, 'One', 'Two', 'Three', 'Four');
    const [id] = await job_ids(page);
    const steps = await keys_of(page, '/step/');
    await harm(page, steps[2]);
    const before = await whole_store(page);
    await again(page);
    await until('what could be read', async () => (await job_name(page)) === 'Two (recovered)');
    await until('it is told', async () => /could not be read and are kept/.test(await said(page)));
    await rename(page, 'On from there');
    await all_saved(page);
    const after = await whole_store(page);
    for (const [key, bytes] of Object.entries(before))
      if (key.startsWith(`journal/${id}/`)) assert.equal(after[key], bytes, key);
    await again(page);
    await until('it goes on', async () => (await job_name(page)) === 'On from there');
    await to_jobs(page);
    await until('the damaged one is listed', async () => /damaged, kept as it is/.test(await said(page)));
  });

function remove(page, key) {
  return page.evaluate(
    (at) =>
      new Promise((resolve) => {
        const opening = indexedDB.open('treadle');
        opening.onsuccess = () => {
          const change = opening.result.transaction('kept', 'readwrite');
          change.objectStore('kept').delete(at);
          change.oncomplete = () => { opening.result.close(); resolve(); };
        };
      }),
    key,
  );
}

test('no room at any one write: told, nothing lost, and saved as soon as there is', {}, async (page) => {
  await page.addInitScript(() => {
    window.refuse = 0; // which of the coming writes finds no room; 0: none
    window.full = false; // from that one on, for the page tries again by itself
    for (const name of ['put', 'add']) {
      const real = IDBObjectStore.prototype[name];
      IDBObjectStore.prototype[name] = function (...values) {
        if (window.full || (window.refuse > 0 && --window.refuse === 0)) {
          if (!window.full) window.refused_key = String(values[1]);
          window.full = true;
          this.transaction.abort();
          throw new DOMException('full', 'QuotaExceededError');
        }
        return real.apply(this, values);
      };
    }
  });
  await named(page, 'Start');
  const hit = [];
  for (let write = 1; write <= 5; ++write) {
    const name = `Refused at write ${write}`;
    await page.evaluate((number) => { window.refuse = number; }, write);
    await rename(page, name);
    // The card comes some time after the name stands, and the fifth write not with every edit.
    const refused = await until('a write is refused', () =>
      page.evaluate(() => window.full && window.refused_key), 5000).catch(() => '');
    hit.push(refused.split('/')[0]);
    // Where somebody is on the page is no work of theirs; a snapshot is made again by itself.
    if (/^(journal\/.*\/(step|head)|card)\//.test(refused))
      await until('it is told', async () =>
        /Not saved: the browser gives this page no more room/.test(await said(page)));
    await page.evaluate(() => { window.refuse = 0; window.full = false; });
    await rename(page, `${name}, and on`);
    await all_saved(page);
    await until('the line is gone', async () => !/no more room/.test(await said(page)));
    await again(page);
    assert.equal(await job_name(page), `${name}, and on`);
  }
  assert.ok(hit.includes('journal') && hit.includes('card'), hit.join(' '));
});

test('a handle that died is opened anew, and the edit is saved', {}, async (page) => {
  await page.addInitScript(() => {
    const real = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (...values) {
      if (window.kill_handle) {
        window.kill_handle = false;
        throw new DOMException('The database connection is closing.', 'InvalidStateError');
      }
      return real.apply(this, values);
    };
  });
  await named(page, 'Before');
  await page.evaluate(() => { window.kill_handle = true; });
  await rename(page, 'With a new handle');
  await all_saved(page);
  await again(page);
  assert.equal(await job_name(page), 'With a new handle');
});

test('a database that died is left for a second one, and comes back when it works again', {}, async (page) => {
  await page.addInitScript(() => {
    const real = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (...values) {
      if (localStorage.getItem('dead') && this.name === 'treadle')
        throw new DOMException('Internal error.', 'UnknownError');
      return real.apply(this, values);
    };
    const opens = IDBFactory.prototype.open;
    IDBFactory.prototype.open = function (name, version) {
      if (localStorage.getItem('dead') === 'wholly' && name === 'treadle') {
        const request = opens.call(this, 'no-such-treadle', 1);
        Object.defineProperty(request, 'error', { get: () => new DOMException('Internal error opening backing store.', 'UnknownError') });
        request.addEventListener('success', (event) => { event.stopImmediatePropagation(); request.result.close(); request.onerror(event); });
        return request;
      }
      return version === undefined ? opens.call(this, name) : opens.call(this, name, version);
    };
  });
  await named(page, 'Before it died');
  await page.evaluate(() => localStorage.setItem('dead', 'wholly'));
  await rename(page, 'After it died');
  await until('it is told', async () => /storage broke/.test(await said(page)));
  await rename(page, 'Kept in the second place');
  await all_saved(page);
  await again(page);
  await until('the second place', async () => (await job_name(page)) === 'Kept in the second place');
  await page.evaluate(() => localStorage.removeItem('dead'));
  await again(page);
  await until('both are there', async () => {
    await to_jobs(page);
    const all = await said(page);
    return /Before it died/.test(all) && /Kept in the second place/.test(all);
  }, 15_000);
});

test('without any database the page works, keeps nothing and says so', {}, async (page) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await open(page);
  await accept_notice(page);
  await until('it is told', async () => /keeps nothing for this page/.test(await said(page)));
  await rename(page, 'Only for now');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    control(page, 'button', 'Save file').click(),
  ]);
  assert.match(download.suggestedFilename(), /Only-for-now/);
});

test('a newer layout of the store is not touched, and the page says that it is older', {}, async (page) => {
  await named(page, 'Mine');
  await page.goto('about:blank');
  const other = await page.context().newPage();
  await other.goto(`${page.origin}/nothing-here`).catch(() => {});
  await other.evaluate(() => new Promise((resolve, reject) => {
    const request = indexedDB.open('treadle', 2);
    request.onupgradeneeded = () => {};
    request.onsuccess = () => { request.result.close(); resolve(); };
    request.onerror = () => reject(request.error);
  }));
  const before = await whole_store(other);
  await open(page);
  await accept_notice(page); // nothing can be read, not even that it was
  await until('it is told', async () => /newer version of this page/.test(await said(page)));
  await rename(page, 'Older');
  await until('it is not stored', async () => /Not saved/.test(await said(page)));
  assert.deepEqual(await whole_store(other), before);
});

test('records of a newer page are shown to nobody and stay as they are', {}, async (page) => {
  await named(page, 'Newer');
  const [id] = await job_ids(page);
  for (const key of await keys_of(page, `journal/${id}/`))
    await kept(page, key, (await kept(page, key)).replace(/^(treadle-\w+) 1/, '$1 2'));
  const before = await whole_store(page);
  await again(page);
  await until('it is told', async () => /another version of Treadle/.test(await said(page)));
  await rename(page, 'Older');
  await all_saved(page);
  const after = await whole_store(page);
  for (const [key, bytes] of Object.entries(before))
    if (key.startsWith(`journal/${id}/`)) assert.equal(after[key], bytes, key);
});

test('a clock that goes backwards changes nothing', {}, async (page) => {
  await page.addInitScript(() => {
    const real = Date;
    let back = 0;
    window.Date = class extends real {
      constructor(...values) {
        if (values.length > 0) super(...values);
        else super(real.now() - (back += 86_400_000));
      }
    };
  });
  await named(page, 'Yesterday', 'The day before', 'Last week');
  await again(page);
  assert.equal(await job_name(page), 'Last week');
  await find(page, things.undo).click();
  await until('undo', async () => (await job_name(page)) === 'The day before');
});
