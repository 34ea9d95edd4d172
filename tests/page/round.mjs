// The whole round: a part gets thicker, its verdict turns, undo takes it back, reload keeps it,
// and the printed document has every part.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { open, picture, ready, root, test, until } from './harness.mjs';
import { accept_notice, go, print, redo, set_thickness, undo, verdict_words } from './words.mjs';

async function thicken_until_refused(page) {
  await open(page);
  await accept_notice(page);
  const before = await until('a verdict', () => verdict_words(page));
  await set_thickness(page, '2 in');
  await until('the verdict turns to "does not fit"', async () =>
    /does not fit/i.test(await verdict_words(page)),
  );
  return before;
}

test('a thicker part turns the verdict, undo and redo turn it back and forth', {}, async (page) => {
  const before = await thicken_until_refused(page);
  assert.doesNotMatch(before, /does not fit/i);
  await picture(page, 'verdict-turned');
  await undo(page).click();
  await until('undo', async () => (await verdict_words(page)) === before);
  await redo(page).click();
  await until('redo', async () => /does not fit/i.test(await verdict_words(page)));
});

test('an edit is still there after a reload', {}, async (page) => {
  await thicken_until_refused(page);
  await page.reload();
  await ready(page);
  await until('the edited verdict after reload', async () =>
    /does not fit/i.test(await verdict_words(page)),
  );
});

test('the printed document has every part of the demo job', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await go(page, 'Sheets');
  await print(page).click();
  const sheet = page.frameLocator('#print-frame').locator('body');
  const paper = await until('the document', async () => (await sheet.innerText()).trim());
  for (const mark of demo_marks()) assert.ok(paper.includes(mark), `no ${mark} on paper`);
  assert.match(paper, /competent person/i);
  assert.match(paper, /invented/i);
});

function demo_marks() {
  const file = JSON.parse(readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8'));
  const marks = file.parts.map((part) => part.mark);
  assert.ok(marks.length >= 10, 'the demo has fewer than ten parts');
  return marks;
}
