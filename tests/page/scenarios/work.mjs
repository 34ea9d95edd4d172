// The order of work at the machine: settings, who does what, and strokes on the cutting edges.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, go, undo } from '../words.mjs';

const heading = (page, name) => control(page, 'heading', name);
const words = (page, text) => page.getByText(text).first();

async function type(page, name, text) {
  const box = control(page, 'textbox', name);
  await box.click();
  await box.fill(text);
  await box.press('Enter');
}

async function open_shop_page(page, name) {
  await go(page, 'Shop');
  await control(page, 'button', name).click();
}

async function start(page) {
  await open(page);
  await accept_notice(page);
}

test('every set-up says what is set, measured and marked', {}, async (page) => {
  await start(page);
  await open_shop_page(page, /^House rules/);
  await type(page, 'Pieces in a batch', '5');
  await type(page, 'Measure 1 piece in', '4');
  await type(page, 'How pieces are marked', 'chalk on the web');
  await go(page, 'Order');
  await until('the order', () => heading(page, 'Set-up 1').isVisible());
  for (const line of [/^Ram up/, /batches of 5/, /First piece: .*1 in 4/, /Mark each piece .*chalk on the web/])
    await until(`${line}`, async () => (await words(page, line).count()) === 1);
  await picture(page, 'order');
});

test('two at the machine: each has set-ups, and what may not run at once is ticked', {}, async (page) => {
  await start(page);
  await go(page, 'Order');
  await until('who does what', () => heading(page, 'Who does what').isVisible());
  const work = words(page, /set-up 1, /);
  await until('the first set-up is somebody\'s', async () => (await work.count()) === 1);
  assert.ok(await heading(page, 'Operator 2').isVisible());
  await open_shop_page(page, /^Punch, Station/);
  const tick = control(page, 'checkbox', 'Flat shear');
  assert.equal(await tick.isChecked(), false);
  await tick.click();
  await until('the tick', () => tick.isChecked());
  await control(page, 'button', /^Flat shear, Station/).click();
  await until('it counts both ways', () => control(page, 'checkbox', 'Punch').isChecked());
  await open_shop_page(page, /, Machine/);
  await type(page, 'People at once', '1');
  await go(page, 'Order');
  await until('alone', async () => (await page.getByRole('heading', { name: 'Who does what' }).count()) === 0);
});

test('strokes are booked on a counted edge, taken back, and ground to zero', {}, async (page) => {
  await start(page);
  await open_shop_page(page, /^Punches, /);
  await control(page, 'button', /^13\/16 round/).click();
  await type(page, 'Strokes since ground', '2990');
  await type(page, 'Grind after, strokes', '3000');
  await go(page, 'Order');
  const line = words(page, /13\/16 round: .*3000/);
  await until('the edge is named', async () => (await line.count()) === 1);
  const before = await line.textContent();
  await control(page, 'button', /^Book this job/).click();
  await until('more strokes', async () => (await line.textContent()) !== before);
  await undo(page).click();
  await until('as before', async () => (await line.textContent()) === before);
  await open_shop_page(page, /^Punches, /);
  await control(page, 'button', /^13\/16 round/).click();
  await control(page, 'button', /^Ground: 13\/16 round/).click();
  const count = control(page, 'textbox', 'Strokes since ground');
  await until('from zero', async () => (await count.inputValue()) === '0');
});
