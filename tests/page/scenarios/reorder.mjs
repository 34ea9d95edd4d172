// Parts and operations change places in their lists, by key and by keyboard.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, part_row, undo } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);

/** Marks in the order of the list, from top to bottom. */
async function marks(page) {
  const rows = page.locator('[data-id="parts"] button');
  const names = await rows.evaluateAll((all) => all
    .map((row) => ({ y: row.getBoundingClientRect().top, words: row.textContent }))
    .sort((a, b) => a.y - b.y)
    .map((row) => row.words.split(',')[0]));
  return names.filter((name) => /^H/.test(name));
}
async function operations(page) {
  const rows = page.getByRole('button', { name: /^Operation \d+:/ });
  return rows.evaluateAll((all) => all.map((row) => row.textContent.split(/[:,]/)[1].trim()));
}

test('a part moves up and down by its keys', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const before = await until('the list', async () => {
    const list = await marks(page);
    return list.length > 3 && list;
  });
  await part_row(page, before[1]).click();
  await button(page, `Move up: ${before[1]}`).click();
  await until('it is first', async () => (await marks(page))[0] === before[1]);
  assert.equal(await button(page, `Move up: ${before[1]}`).getAttribute('aria-disabled'), 'true');
  await button(page, `Move down: ${before[1]}`).click();
  await until('it is second', async () => (await marks(page))[1] === before[1]);
  await picture(page, 'reorder-parts');
});

test('Ctrl and an arrow move the row that has the keyboard, and it keeps it', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const before = await until('the list', async () => {
    const list = await marks(page);
    return list.length > 3 && list;
  });
  await page.keyboard.press('Tab');
  await part_row(page, before[0]).focus();
  await page.keyboard.press('Control+ArrowDown');
  await until('it is second', async () => (await marks(page))[1] === before[0]);
  await until('the keyboard', () => part_row(page, before[0]).evaluate((row) => row === document.activeElement));
  await page.keyboard.press('Control+ArrowDown');
  await until('it is third', async () => (await marks(page))[2] === before[0]);
  await undo(page).click();
  await undo(page).click();
  await until('as before', async () => (await marks(page))[0] === before[0]);
});

test('an operation moves, is copied, and undo brings it back', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const before = await operations(page);
  assert.ok(before.length >= 3, JSON.stringify(before));
  await button(page, /^Operation 3:/).click();
  await button(page, 'Move up: operation 3').click();
  await until('it is second', async () => (await operations(page))[1] === before[2]);
  await button(page, 'Move up: operation 2').click();
  await until('it is first', async () => (await operations(page))[0] === before[2]);
  await button(page, /^Change operation/).click();
  await button(page, 'Copy operation 1').click();
  await until('twice', async () => (await operations(page)).length === before.length + 1);
  for (let i = 0; i < 3; i += 1) await undo(page).click();
  await until('as before', async () =>
    JSON.stringify(await operations(page)) === JSON.stringify(before));
});
