// What would make it fit: offered under the operation, made with one tap, taken back with one more.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, part_row, undo, verdict_words } from '../words.mjs';

const finger = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };
const k_plate = 'HB3'; // fits only up to a strength: its holes are near the punch's limit
const k_tube = 'HT1'; // no blade takes tube

async function open_part(page, mark) {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  await part_row(page, mark).tap();
  await until('the list', () => control(page, 'heading', 'What would make it fit').isVisible());
}

const try_it = (page, words) => control(page, 'button', new RegExp(`^Try it: ${words}`));

test('a smaller hole is tried with a tap and taken back', finger, async (page) => {
  await open_part(page, k_plate);
  assert.match(await verdict_words(page, k_plate), /fits up to/);
  const smaller = try_it(page, 'Punch 15/16 round instead of 1-1/16 round, fits');
  await until('the smaller hole is offered', () => smaller.isVisible());
  // A strength that nobody has read is not entered by a key.
  assert.equal(await page.getByRole('button', { name: /^Try it: .*certificate/i }).count(), 0);
  await picture(page, 'remedies');
  await smaller.tap();
  await until('it fits', async () => /: fits$/.test(await verdict_words(page, k_plate)));
  assert.ok(await control(page, 'button', /^Operation 2: Punch 15\/16 round, fits/).isVisible());
  await until('nothing more is offered', async () =>
    (await page.getByRole('heading', { name: 'What would make it fit' }).count()) === 0);
  await undo(page).tap();
  await until('as before', async () => /fits up to/.test(await verdict_words(page, k_plate)));
});

test('work that leaves the machine leaves the list and comes back with undo', finger, async (page) => {
  await open_part(page, k_tube);
  assert.match(await verdict_words(page, k_tube), /does not fit/);
  await try_it(page, 'Saw it to length, off this machine').tap();
  const cut = page.getByRole('button', { name: /^Operation 1:/ });
  await until('the cut is gone', async () => (await cut.count()) === 0);
  await undo(page).tap();
  await until('the cut is back', async () => (await cut.count()) === 1);
  await until('the verdict too', async () => /does not fit/.test(await verdict_words(page, k_tube)));
});
