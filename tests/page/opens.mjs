// The page opens: with the demo job, in silence, and sharp.

import assert from 'node:assert/strict';

import { open, picture, said, test, until } from './harness.mjs';

test('opens with the demo job, marked as invented', {}, async (page) => {
  await open(page);
  await until('the demo is named as invented', async () => /invented/i.test(await said(page)));
  await picture(page, 'opens');
});

test('says at first start who decides: manual, local codes, a competent person', {}, async (page) => {
  await open(page);
  for (const needed of [/manual/i, /code/i, /competent person/i])
    await until(`the notice says ${needed}`, async () => needed.test(await said(page)));
});

test('keeps its content policy and asks no other host for anything', {}, async (page) => {
  const policy = (await page.request.get(page.origin + '/')).text();
  assert.match(await policy, /Content-Security-Policy/i);
  assert.match(await policy, /default-src 'none'/);
  assert.doesNotMatch(await policy, /'unsafe-inline'|'unsafe-eval'/);
  await open(page);
  assert.deepEqual(await page.evaluate(() => window.csp_violations), []);
  assert.deepEqual(page.foreign, []);
});

test('is sharp at device pixel ratio 2', { deviceScaleFactor: 2 }, async (page) => {
  await open(page);
  const canvas = await page.evaluate(() => {
    const found = document.querySelector('canvas');
    return { pixels: found.width, css: found.getBoundingClientRect().width };
  });
  assert.ok(Math.abs(canvas.pixels - 2 * canvas.css) <= 2, JSON.stringify(canvas));
  await picture(page, 'opens-at-2x');
});
