// Fingers by the hundred: a drag over a row of keys scrolls and presses none of them, and one tap is
// one press.

import assert from 'node:assert/strict';

import { is_long, open, test, until } from './harness.mjs';
import { finger } from './hands/touch.mjs';
import { settled } from './walk.mjs';
import { accept_notice, find, things } from './words.mjs';

const k_times = is_long ? 200 : 40;
const tablet = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };

/** Counts what the program takes for a press: each one reaches it as a change of the chosen part. */
const chosen = (page) => page.evaluate(() => {
  const pressed = document.querySelectorAll('.m-row[aria-pressed=true]');
  return [...pressed].map((row) => row.textContent).join(' | ');
});
const place_of = (page) => page.evaluate(() => document.querySelector('.m-row').closest('.m-scroll').scrollTop);

test(`a drag over a list of keys scrolls and presses nothing, ${k_times} of ${k_times}`, { ...tablet, viewport: { width: 1024, height: 768 } },
  async (page) => {
    await open(page);
    await accept_notice(page, (button) => button.tap());
    const hand = await finger(page);
    const row = await find(page, things.part('HB2')).boundingBox();
    const before = await chosen(page);
    let moved = 0;
    for (let i = 0; i < k_times; ++i) {
      const at = await place_of(page);
      // From 12 px on it is a drag; up and down in turn, short and long, on another spot each time.
      const far = 30 + (i * 37) % 200;
      const up = i % 2 === 0;
      const x = row.x + 10 + ((i * 53) % (row.width - 20));
      await hand.drag(x, up ? 580 : 380, 0, up ? -far : far, 3, i % 4 !== 0); // one in four glides on
      await settled(page);
      if ((await place_of(page)) !== at) ++moved;
      assert.equal(await chosen(page), before, `drag ${i + 1} of ${far} px pressed something`);
    }
    assert.equal(moved, k_times, 'some drags did not scroll');
  });

test(`one tap is one press, ${k_times} of ${k_times}`, tablet, async (page) => {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  const hand = await finger(page);
  await find(page, things.add_operation).scrollIntoViewIfNeeded();
  await settled(page);
  const key = find(page, { role: 'button', name: /^Add (an operation|nothing)$/ });
  const open_now = () => find(page, { role: 'button', name: 'Add nothing' }).count();
  await page.evaluate(measure_frames);
  for (let i = 0; i < k_times; ++i) {
    const was = await open_now();
    const box = await key.boundingBox(); // what the first tap opens is brought into sight
    await hand.tap(box.x + 20 + ((i * 7) % 60), box.y + box.height / 2);
    await until(`tap ${i + 1} presses`, async () => (await open_now()) !== was);
    await settled(page);
    assert.notEqual(await open_now(), was, `tap ${i + 1} pressed twice`);
  }
  const waits = (await page.evaluate(() => window.waits)).sort((a, b) => a - b);
  assert.ok(waits.length >= k_times, `${waits.length} frames followed ${k_times} taps`);
  const at = (share) => waits[Math.floor(share * (waits.length - 1))].toFixed(1);
  console.log(`        first frame after a tap: median ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms (aim 50)`);
});

/** Runs in the page: the time from a finger's leaving to the frame that answers it. */
function measure_frames() {
  window.waits = [];
  let left = 0;
  window.addEventListener('pointerup', () => { left = performance.now(); }, true);
  new MutationObserver(() => {
    if (left) window.waits.push(performance.now() - left);
    left = 0;
  }).observe(document.getElementById('stage'), { attributes: true, attributeFilter: ['data-frames'] });
}
