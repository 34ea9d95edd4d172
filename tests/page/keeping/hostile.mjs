// Hostile files given to the page: each is refused with a reason, and what is kept stays as it is,
// byte for byte.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { control, open, root, said, test, until } from '../harness.mjs';
import { accept_notice, go, place } from '../words.mjs';
import { all_saved, job_name, rename, whole_store } from './stored.mjs';

const k_read = new Set(['job', 'shop', 'bundle']); // what "Open file" takes as a whole
const k_most = 1_000_000; // larger ones are refused by their length before they are read

test('hostile files are refused with a reason, and the store stays byte for byte', { alone: true }, async (page) => {
  const folder = mkdtempSync(join(tmpdir(), 'treadle-hostile-'));
  execFileSync('node', [join(root, 'tests', 'hostile', 'make.mjs'), folder]);
  const index = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8'));
  await open(page);
  await accept_notice(page);
  await rename(page, 'Mine');
  await all_saved(page);
  await go(page, 'Parts');
  await page.waitForTimeout(1500); // the place is kept a second after the last picture
  const before = await whole_store(page);
  let refused = 0;
  for (const { file, kind } of index.filter((one) => k_read.has(one.kind))) {
    const bytes = readFileSync(join(folder, file));
    if (bytes.length > k_most) continue;
    await page.evaluate(
      async ([name, text]) => {
        const data = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
        const transfer = new DataTransfer();
        transfer.items.add(new File([data], name));
        document.documentElement.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
      },
      [`${file}.json`, bytes.toString('base64')],
    );
    // Of a file of several jobs the sound ones are offered, and each other one is named with its reason.
    const answer = await until(`${file} (${kind}) is refused`, async () =>
      ((await page.getByText(`${file}.json was not opened`).count()) && 'refused') ||
      (kind === 'bundle' && (await page.getByText(/^Left out: .+: ./).count()) && 'left out'));
    if (answer === 'left out') {
      await control(page, 'button', 'Leave them').click();
      await until('none is offered', async () => (await page.getByText(/^Left out: /).count()) === 0);
      await go(page, 'Parts');
    }
    refused += 1;
  }
  assert.ok(refused >= 150, `${refused} files were given`);
  assert.equal(await job_name(page), 'Mine');
  await page.waitForTimeout(1500);
  assert.deepEqual(await whole_store(page), before);
  assert.doesNotMatch(await said(page), /fault/);
  rmSync(folder, { recursive: true, force: true });
});
