// Files from outside: a bad one is refused with field and reason, and the stored job stays as it is.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { give_file, open, ready, root, said, test, until } from './harness.mjs';
import { accept_notice, go, open_file, save_file, set_thickness, verdict_words } from './words.mjs';

const demo = () => readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8');

const bad_files = [
  { name: 'not JSON', text: () => 'this is no job', says: /not.*json|cannot be read/i },
  { name: 'cut in half', text: () => demo().slice(0, demo().length / 2), says: /cut short/i },
  { name: 'newer version', text: () => demo().replace(/"version": *1\b/, '"version": 999'), says: /version/i },
  { name: 'NaN as a length', text: () => demo().replace(/"length": *"[^"]*"/, '"length": "NaN in"'), says: /length/i },
  { name: 'nested too deep', text: () => '['.repeat(100_000), says: /deep|nest/i },
];

async function saved(page) {
  await go(page, 'Sheets');
  const [download] = await Promise.all([page.waitForEvent('download'), save_file(page).click()]);
  return readFileSync(await download.path(), 'utf8');
}

for (const { name, text, says } of bad_files) {
  test(`a file with a fault is refused and changes nothing: ${name}`, {}, async (page) => {
    await open(page);
    await accept_notice(page);
    await go(page, 'Sheets');
    const before = await saved(page);
    assert.notEqual(text(), demo(), 'the fault is not in the file');
    assert.doesNotMatch(await said(page), says, 'the words stood there before');
    await give_file(page, () => open_file(page).click(), 'bad.json', text());
    await until('the refusal', async () => says.test(await said(page)));
    await page.reload();
    await ready(page);
    assert.equal(await saved(page), before);
  });
}

test('a saved file brings back the job as it was, over a later edit', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const before = await saved(page);
  await go(page, 'Parts');
  await set_thickness(page, '1/4 in');
  await until('the edit', async () => /1\/4/.test(await verdict_words(page)));
  assert.notEqual(await saved(page), before);
  await give_file(page, () => open_file(page).click(), 'same.json', before);
  await until('the job as it was', async () => (await saved(page)) === before);
});
