// Without a network: what is kept on the device opens, reloads and computes; all of a build or none.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { control, open, picture, ready, root, said, site_file, test, until } from '../harness.mjs';
import { serve } from '../server.mjs';
import { accept_notice, go, place } from '../words.mjs';
import { build_of, k_kept_ms, look_for_versions, make_site, on_bench, switch_key, works_offline } from './bench.mjs';

const caches_of = (page) => page.evaluate(() => caches.keys());

async function bars_are_found(page) {
  await go(page, 'Bars');
  await until('the bars', () => page.getByText(/^\d+ sections: .* bars, proven/).count());
}

test('with the host gone: open, reload, another tab, and the browser started again', { alone: true }, () =>
  on_bench({ again: true }, async (bench) => {
    const first = await bench.tab();
    await open(first);
    await accept_notice(first);
    await works_offline(first);
    await picture(first, 'forms-works-offline');
    await bench.host.close();
    await bars_are_found(first);
    await first.reload();
    await ready(first);
    await works_offline(first);
    const second = await bench.tab();
    await open(second);
    await bars_are_found(second);
    await bench.restart();
    const later = await bench.tab();
    await open(later);
    await until('the page', () => place(later, 'Parts').isVisible());
    await works_offline(later);
    await bars_are_found(later);
    for (const page of [first, second, later])
      assert.deepEqual(page.faults.filter((line) => !/Failed to load resource|ERR_CONNECTION|fetching the script/.test(line)), []);
  }));

test('one file that is missing while a version comes in: the old one stays whole', { alone: true }, async () => {
  const [a, b] = ['0.1.1', '0.1.2'].map(make_site);
  await on_bench({ folder: a.folder, sites: [a, b] }, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await accept_notice(page);
    await works_offline(page);
    const lost = `/${site_file('cutter-plain.wasm', b.folder)}`;
    bench.host.instead.set(lost, null);
    bench.host.folder = b.folder;
    const before = bench.host.asked.length;
    await look_for_versions(page);
    await until('the worker has asked for it', () => bench.host.asked.slice(before).includes(lost), k_kept_ms);
    await until('the worker is given up', () => page.evaluate(async () => {
      const found = await navigator.serviceWorker.getRegistration();
      return !found.installing && !found.waiting;
    }), k_kept_ms);
    assert.deepEqual(await caches_of(page), [`treadle-${a.id}`]);
    await page.reload();
    await ready(page);
    assert.equal(await build_of(page), a.id);
    assert.equal(await switch_key(page).count(), 0);
    bench.host.instead.clear();
    await look_for_versions(page);
    await until('the version', () => switch_key(page).count(), k_kept_ms);
    assert.deepEqual((await caches_of(page)).sort(), [`treadle-${a.id}`, `treadle-${b.id}`].sort());
  });
});

test('the kill switch takes the worker and its files away, and leaves the job', { alone: true }, async () => {
  await on_bench({}, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await accept_notice(page);
    await works_offline(page);
    bench.host.instead.set('/sw.js', readFileSync(join(root, 'web', 'hosting', 'sw-off.js')));
    // What the browser does when it has time.
    await page.evaluate(() => navigator.serviceWorker.register('sw.js?now'));
    await until('no file is kept', async () => (await caches_of(page)).length === 0, k_kept_ms);
    await page.reload();
    await ready(page);
    assert.equal(await control(page, 'button', 'Understood').count(), 0, 'what was stored is gone');
  });
});

test('the worker serves no shelf and nothing that is not of its build', { alone: true }, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await works_offline(page);
    bench.host.instead.set('/shelf.json', Buffer.from('{"entries":["withdrawn"]}'));
    const asked = async (path) => page.evaluate((at) => fetch(at).then((a) => a.text(), () => 'none'), path);
    assert.match(await asked('shelf.json'), /withdrawn/);
    await bench.host.close();
    assert.deepEqual(JSON.parse(await asked('shelf.json')).entries, [], 'a shelf without a host is empty');
    assert.equal(await asked('index.html'), 'none');
    const again = await serve(bench.host.folder, bench.host.port); // what came in once is withdrawn
    assert.doesNotMatch(await asked('shelf.json'), /withdrawn/);
    await again.close();
    const kept = await page.evaluate(async () => {
      const [name] = await caches.keys();
      return (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname);
    });
    assert.deepEqual(kept.filter((path) => /shelf|build\.json|sw\.js|treadle-/.test(path)), []);
    assert.match(await said(page), /works offline/);
  }));
