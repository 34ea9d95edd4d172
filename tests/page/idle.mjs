// In no view is a frame drawn unasked. The views stand side by side, so that all wait at once.

import assert from 'node:assert/strict';

import { test } from './harness.mjs';
import { go_to, names_of_views, settled } from './walk.mjs';

const k_idle_ms = 10_000;
const k_at_once = 10; // pages in one test

const frames = (page) => page.evaluate(() => Number(document.getElementById('stage').dataset.frames));

const views = names_of_views();
for (let from = 0; from < views.length; from += k_at_once) {
  const some = views.slice(from, from + k_at_once);
  test(`ten idle seconds draw no frame in: ${some.join(', ')}`, {}, async (page, context) => {
    const pages = [];
    for (const view of some) {
      const other = await context.newPage();
      other.origin = page.origin;
      await go_to(other, view);
      await settled(other);
      pages.push(other);
    }
    await page.waitForTimeout(2000); // what a view still computes
    const before = await Promise.all(pages.map(frames));
    assert.ok(before.every((count) => count > 0), `frames are not counted: ${before}`);
    await page.waitForTimeout(k_idle_ms);
    const after = await Promise.all(pages.map(frames));
    const drawn = some.filter((view, i) => before[i] !== after[i]).map((view) => `${view}`);
    assert.deepEqual(drawn, [], 'frames were drawn unasked');
  });
}
