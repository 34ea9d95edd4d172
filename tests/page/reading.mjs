// On a screen 320 px wide everything can be read: nothing lies beside the screen, nothing needs a
// sideways scroll, and no sentence is cut short.

import assert from 'node:assert/strict';

import { test } from './harness.mjs';
import { drawn } from './drawn.mjs';
import { walk } from './walk.mjs';

const k_most_told = 60;

/** Nodes that cannot be brought into sight whole, in words. Runs in the page. */
function out_of_reach() {
  const wrong = [];
  if (document.documentElement.scrollWidth > innerWidth) wrong.push('the page scrolls sideways');
  for (const node of document.querySelectorAll('#mirror [data-id]')) {
    const box = node.getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    const area = node.parentElement.closest('.m-scroll');
    const clip = (area ?? document.getElementById('stage')).getBoundingClientRect();
    const name = `${node.getAttribute('role') ?? node.tagName} "${node.getAttribute('aria-label') ?? node.textContent.slice(0, 60)}"`;
    if (box.left < clip.left - 1 || box.right > clip.right + 1)
      wrong.push(`${name} reaches from ${box.left} to ${box.right} between ${clip.left} and ${clip.right}`);
    const top = area ? box.top - clip.top + area.scrollTop : box.top;
    const end = area ? area.scrollHeight : clip.bottom;
    if (top < -1 || top + box.height > end + 1)
      wrong.push(`${name} reaches from ${top} down to ${top + box.height}, and ${end} is the end`);
  }
  return wrong;
}

test('at 320 px every view can be read to its end', { viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true },
  async (page) => {
    const wrong = [];
    await walk(page, async (view) => {
      wrong.push(...(await page.evaluate(out_of_reach)).map((fault) => `${view}: ${fault}`));
      if (await page.locator('#preview').isVisible()) return;
      // The job's name and short ones in fields and lists may be cut: they stand whole where they are
      // typed or opened. A sentence stands nowhere else.
      const { cut } = await drawn(page);
      const job = await page.locator('#mirror h1').first().textContent();
      wrong.push(...[...new Set(cut)].filter((words) => words !== job && words.split(' ').length > 6)
        .map((words) => `${view}: cut short: ${words}`));
    });
    assert.ok(wrong.length === 0, `${wrong.length} faults:\n${wrong.slice(0, k_most_told).join('\n')}`);
  });
