// What goes wrong at the start is told in words, with its cause; what does not matter is not.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { open, picture, ready, said, site, site_file, test, until } from '../harness.mjs';
import { accept_notice, part_row } from '../words.mjs';
import { on_bench } from './bench.mjs';

async function trouble(page) {
  await until('a message', () => page.locator('#trouble').isVisible(), 30_000);
  assert.equal(await page.locator('#splash').isVisible(), false);
  assert.ok(await page.getByRole('link', { name: 'Try again' }).isVisible());
  return page.locator('#trouble').textContent();
}

/** With one bit of it turned. */
function turned(name) {
  const bytes = Buffer.from(readFileSync(join(site, name)));
  bytes[bytes.length - 2] ^= 1;
  return bytes;
}

for (const type of ['application/octet-stream', 'text/plain']) {
  test(`starts without a word where wasm is sent as ${type}`, { alone: true }, () =>
    on_bench({}, async (bench) => {
      bench.host.types['.wasm'] = type;
      const page = await bench.tab();
      await open(page);
      await accept_notice(page);
      await until('the job', () => part_row(page).isVisible());
      assert.equal(await page.locator('#trouble').isVisible(), false);
      assert.deepEqual(page.faults, []);
    }));
}

for (const name of ['app.wasm', 'app.mjs', 'boot.mjs', 'site.css', 'guard.js']) {
  test(`a missing ${name}, then a changed one: not run, and told`, { alone: true }, () =>
    on_bench({}, async (bench) => {
      const page = await bench.tab();
      const file = site_file(name);
      const told = async () => (name === 'guard.js'
        ? until('the line', () => page.getByText(/guard\.js.*Reload/).textContent()) : trouble(page));
      bench.host.instead.set(`/${file}`, null);
      await page.goto(bench.origin);
      assert.match(await told(), /missing/);
      bench.host.instead.set(`/${file}`, turned(file));
      await page.goto(bench.origin);
      assert.match(await told(), /changed/);
      await picture(page, `forms-changed-${name}`);
      bench.host.instead.clear();
      await open(page);
      await until('the job', () => part_row(page).count());
    }));
}

test('a typeface that is missing or changed is told, and the page works', { alone: true }, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    for (const instead of [null, turned(site_file('B612-Bold.otf'))]) {
      bench.host.instead.set(`/${site_file('B612-Bold.otf')}`, instead);
      await page.goto(bench.origin);
      await ready(page);
      assert.match(await page.locator('#plain').textContent(), /typeface.*missing or was changed.*Reload/);
      await until('the page', async () => /Treadle|Parts/.test(await said(page)));
    }
    await picture(page, 'forms-no-typeface');
  }));

test('wasm that the host forbids is told', { alone: true }, () =>
  on_bench({}, async (bench) => {
    bench.host.headers['content-security-policy'] = "script-src 'self'";
    const page = await bench.tab();
    await page.goto(bench.origin);
    assert.match(await trouble(page), /WebAssembly was blocked.*another browser/s);
    await picture(page, 'forms-wasm-blocked');
  }));

for (const [name, viewport] of [['desk', { width: 1280, height: 800 }], ['tablet', { width: 800, height: 1280 }]]) {
  test(`a browser without 3D works without drawings and says so, ${name}`, { alone: true }, () =>
    on_bench({ args: ['--disable-3d-apis'], options: { viewport } }, async (bench) => {
      const page = await bench.tab();
      await open(page);
      assert.equal(await page.evaluate(() => document.createElement('canvas').getContext('webgl2')), null);
      assert.match(await page.locator('#plain').textContent(), /Drawings are missing.*WebGL/);
      await accept_notice(page);
      await until('the job', () => part_row(page).isVisible());
      await picture(page, `forms-no-webgl-${name}`);
    }));
}
