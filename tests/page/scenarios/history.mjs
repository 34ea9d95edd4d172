// Undo and redo over a reload, and what is kept of an edit.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';

import { control, open, ready, said, test, until } from '../harness.mjs';
import { kept_history, kept_keys } from '../kept.mjs';
import { accept_notice, go, k_part, place, redo, save_file, verdict_words } from '../words.mjs';

const k_steps = 200;

async function start(page) {
  await open(page);
  await accept_notice(page);
  await control(page, 'button', new RegExp(`^Change sizes of ${k_part}`)).click();
}

async function pieces(page, count) {
  await until(`${count} pieces`, async () =>
    (await verdict_words(page)).includes(` ${count} pieces`),
  );
}

async function set_pieces(page, count) {
  const field = control(page, 'textbox', 'Pieces');
  await field.fill(String(count));
  await field.press('Enter');
  await pieces(page, count);
}

async function saved_file(page) {
  await go(page, 'Sheets');
  const [download] = await Promise.all([page.waitForEvent('download'), save_file(page).click()]);
  await go(page, 'Parts');
  return readFileSync(await download.path(), 'utf8');
}

async function all_saved(page) {
  await until('all is stored', async () => /Saved \d/.test(await said(page)));
}

async function again(page) {
  await all_saved(page);
  await page.reload();
  await ready(page);
}

/** Enters the counts one after the other, each when the list shows the one before. */
async function enter_pieces(page, counts) {
  await until('the field', () => control(page, 'textbox', 'Pieces').count());
  await page.evaluate(
    async ([all, mark]) => {
      const field = [...document.querySelectorAll('input[data-id]')].find(
        (one) => one.getAttribute('aria-label') === 'Pieces',
      );
      const row = [...document.querySelectorAll('button.m-row')].find((one) =>
        one.textContent.startsWith(`${mark}, `),
      );
      for (const count of all) {
        field.focus();
        field.value = String(count);
        field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
        while (!row.textContent.includes(` ${count} pieces`))
          await new Promise((resolve) => requestAnimationFrame(resolve));
      }
    },
    [counts, k_part],
  );
}

/** Presses a key with Ctrl as often as there are counts, each when the list shows the one before. */
function press_through(page, key, counts) {
  return page.evaluate(
    async ([letter, all, mark]) => {
      const row = [...document.querySelectorAll('button.m-row')].find((one) =>
        one.textContent.startsWith(`${mark}, `),
      );
      for (const count of all) {
        document.body.dispatchEvent(
          new KeyboardEvent('keydown', { key: letter, ctrlKey: true, bubbles: true }),
        );
        while (!row.textContent.includes(` ${count} pieces`))
          await new Promise((resolve) => requestAnimationFrame(resolve));
      }
    },
    [key, counts, k_part],
  );
}

/** From one count to the other, both with it. */
function counts(from, to) {
  const by = from < to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + by * i);
}

// A small picture: a thousand of them are drawn.
const k_small = { viewport: { width: 760, height: 420 } };

test('two hundred steps lead back and forth over reloads, to the same bytes', k_small, async (page) => {
  const oldest = 1005;
  const last = oldest + k_steps;
  const middle = last - 90;
  await start(page);
  await enter_pieces(page, counts(1001, oldest));
  const at_oldest = await saved_file(page);
  await enter_pieces(page, counts(oldest + 1, last));
  const at_last = await saved_file(page);
  await again(page);
  await press_through(page, 'z', counts(last - 1, middle));
  await again(page);
  await pieces(page, middle);
  await press_through(page, 'z', counts(middle - 1, oldest));
  assert.equal(await saved_file(page), at_oldest);
  await again(page);
  await press_through(page, 'y', counts(oldest + 1, last));
  assert.equal(await redo(page).getAttribute('aria-disabled'), 'true');
  assert.equal(await saved_file(page), at_last);
});

test('an edit is stored as a step, and a base only now and then', {}, async (page) => {
  await start(page);
  const whole = (await saved_file(page)).length;
  await set_pieces(page, 21);
  await set_pieces(page, 22);
  await all_saved(page);
  const records = await kept_history(page);
  const steps = records.filter((record) => record.key.includes('/step/'));
  // The job before the first edit, and the one after it: none of them holds the job alone.
  const bases = async () => (await kept_keys(page)).filter((key) => key.includes('/base/')).length;
  await until('two snapshots', async () => (await bases()) === 2);
  assert.equal(steps.length, 2);
  for (const step of steps) assert.ok(step.text.length < whole / 20, `${step.text.length} of ${whole}`);
  assert.equal((await kept_keys(page)).includes('job'), false);
});

test('the place, a refused entry and an unfinished one are there after a reload', {}, async (page) => {
  await start(page);
  const field = control(page, 'textbox', 'Thickness');
  await field.fill('9 furlongs');
  await field.press('Enter');
  await until('the refusal', async () => (await field.getAttribute('aria-invalid')) === 'true');
  const length = control(page, 'textbox', 'Length');
  await length.click();
  await length.pressSequentially('7 3/');
  await page.reload();
  await ready(page);
  await until('the unfinished entry', async () => (await length.inputValue()) === '7 3/');
  assert.equal(await length.evaluate((element) => element === document.activeElement), true);
  assert.equal(await field.inputValue(), '9 furlongs');
  assert.equal(await field.getAttribute('aria-invalid'), 'true');
  await length.press('Escape');
  await go(page, 'Order');
  const order = page.getByRole('group', { name: 'Order of work' });
  await order.evaluate((element) => element.scrollTo(0, 300));
  await page.waitForTimeout(1500);
  await page.reload();
  await ready(page);
  await until('the place', async () => (await order.count()) === 1);
  assert.equal(await order.evaluate((element) => element.scrollTop), 300);
});
