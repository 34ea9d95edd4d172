// Starting again, and starting with something in the store that cannot be read.

import assert from 'node:assert/strict';

import { control, open, ready, said, test, until } from '../harness.mjs';
import { kept, kept_history } from '../kept.mjs';
import { accept_notice, go, part_row, set_thickness, verdict_words } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);

test('the metric demo and an empty job are begun, and the first job stays kept', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await set_thickness(page, '1/4 in');
  await until('the edit', async () => /1\/4/.test(await verdict_words(page)));
  await go(page, 'Jobs');
  await button(page, /^Begin with the demo job in millimetres/).click();
  await until('millimetres', () => button(page, /^Units: mm/).isVisible());
  await go(page, 'Jobs');
  await button(page, 'New empty job').click();
  await go(page, 'Parts');
  await until('no parts', async () => /no parts yet/.test(await said(page)));
  await go(page, 'Jobs');
  await button(page, /^Open: /).click();
  await go(page, 'Parts');
  await until('the first job', () => part_row(page).isVisible());
  assert.match(await verdict_words(page), /1\/4/);
});

test('a job of the first pages that cannot be read is reported and stays', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const newer = '{"format": "treadle-job", "version": 99}';
  await kept(page, 'job', newer);
  await page.reload();
  await ready(page);
  await until('the report', async () => /could not be read.*version/is.test(await said(page)));
  await set_thickness(page, '1/4 in');
  await until('the edit', async () => /1\/4/.test(await verdict_words(page)));
  await until('the edit is stored', async () =>
    (await kept_history(page)).some((record) => record.text.includes('1/4 in')),
  );
  assert.equal(await kept(page, 'job'), newer);
});

test('the notice is shown once, and stands under Help', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await page.waitForTimeout(300);
  await page.reload();
  await ready(page);
  await until('the job', () => part_row(page).isVisible());
  assert.equal(await button(page, 'Understood').count(), 0);
  await go(page, 'Help');
  await button(page, 'What can hurt').click();
  await until('the notice', async () => /competent person/.test(await said(page)));
});
