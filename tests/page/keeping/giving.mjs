// What comes from elsewhere and goes there: links, the shelf, files of several jobs, shops, tables.
// Whatever comes, what is kept stays as it is.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { control, give_file, open, ready, root, said, site, test, until } from '../harness.mjs';
import { serve } from '../server.mjs';
import { accept_notice, find, go, open_file, part_row, save_file, things } from '../words.mjs';
import { all_saved, job_ids, job_name, rename, to_jobs, whole_store } from './stored.mjs';

const demo = () => JSON.parse(readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8'));
const named = (name) => JSON.stringify({ ...demo(), name });

async function mine(page, name = 'Mine') {
  await open(page);
  await accept_notice(page);
  await rename(page, name);
  await all_saved(page);
}

async function downloaded(page, press) {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFileSync(await download.path(), 'utf8');
}

const journals = async (page) =>
  Object.fromEntries(Object.entries(await whole_store(page)).filter(([key]) => key.startsWith('journal/')));

test('a link opens its job beside what is kept, and makes one of it with the first edit', { permissions: ['clipboard-read', 'clipboard-write'] }, async (page, context) => {
  await mine(page, 'Sent by link');
  await to_jobs(page);
  await control(page, 'button', /^Copy a link/).click();
  await until('the clipboard', async () => /The link is on the clipboard/.test(await said(page)));
  const link = await page.evaluate(() => navigator.clipboard.readText());
  assert.match(link, new RegExp(`^${page.origin}/#j=1\\.[\\w-]+$`));
  assert.ok(link.length <= 1500, `${link.length} letters`);
  const before = await journals(page);
  const other = await context.newPage();
  await other.goto(link);
  await ready(other);
  await until('the job of the link', async () => (await job_name(other)) === 'Sent by link');
  assert.equal(new URL(other.url()).hash, '');
  await until('it is told', async () => /came with a link/.test(await said(other)));
  assert.deepEqual(await journals(other), before);
  await rename(other, 'Mine now');
  await all_saved(other);
  assert.equal((await job_ids(other)).length, 2);
  const after = await journals(other);
  for (const [key, bytes] of Object.entries(before)) assert.equal(after[key], bytes, key);
});

for (const [what, change, says] of [
  ['of a newer page', (link) => link.replace('#j=1.', '#j=2.'), /newer/],
  ['with one letter changed', (link) => `${link.slice(0, -9)}${link.at(-9) === 'A' ? 'B' : 'A'}${link.slice(-8)}`, /link/i],
])
  test(`a link ${what} is refused and changes nothing`, { permissions: ['clipboard-read', 'clipboard-write'] }, async (page, context) => {
    await mine(page);
    await to_jobs(page);
    await control(page, 'button', /^Copy a link/).click();
    await until('the clipboard', async () => /The link is on the clipboard/.test(await said(page)));
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const before = await journals(page);
    await page.close();
    const other = await context.newPage();
    await other.goto(change(link));
    await ready(other);
    await until('the refusal', async () => /The link was not opened/.test(await said(other)));
    assert.match(await said(other), says);
    assert.equal(await job_name(other), 'Mine');
    assert.deepEqual(await journals(other), before);
  });

test('all jobs go into one file, and come back beside what is there', {}, async (page) => {
  await mine(page, 'First');
  await to_jobs(page);
  await give_file(page, () => open_file(page).click(), 'second.json', named('Second'));
  await until('the second', async () => (await job_name(page)) === 'Second');
  await to_jobs(page);
  const all = await downloaded(page, () => control(page, 'button', 'Save all jobs in one file').click());
  const bundle = JSON.parse(all);
  assert.deepEqual(bundle.jobs.map((one) => one.file.name).sort(), ['First', 'Second']);
  bundle.jobs.push({ state: 'kept', file: { format: 'treadle-job', version: 1, units: 'furlong', parts: [] } });
  const before = await journals(page);
  await give_file(page, () => open_file(page).click(), 'all.json', JSON.stringify(bundle));
  await until('what is in it', async () => /Nothing has been taken from it yet/.test(await said(page)));
  assert.match(await said(page), /Left out: jobs\[2\]/);
  assert.deepEqual(await journals(page), before);
  await control(page, 'button', 'Add 2 jobs').click();
  await until('four jobs', async () => (await job_ids(page)).length === 4);
  const after = await journals(page);
  for (const [key, bytes] of Object.entries(before)) assert.equal(after[key], bytes, key);
});

test('a shop goes into a file and into another job, and undo brings the one before back', {}, async (page) => {
  await mine(page);
  await to_jobs(page);
  const before = await downloaded(page, () => save_file(page).click());
  const shop = JSON.parse(await downloaded(page, () => control(page, 'button', 'Save the shop as a file').click()));
  assert.equal(shop.format, 'treadle-shop');
  shop.shop.name = 'The other shop';
  await give_file(page, () => open_file(page).click(), 'shop.json', JSON.stringify(shop));
  await until('the shop', async () => /uses the shop of shop.json/.test(await said(page)));
  await to_jobs(page);
  assert.match(await downloaded(page, () => save_file(page).click()), /The other shop/);
  await until('a state to go back to', async () => /Before a shop file was opened/.test(await said(page)));
  await find(page, things.undo).click();
  assert.equal(await downloaded(page, () => save_file(page).click()), before);
});

test('the shelf of the host is offered, looked at, and mine with the first edit', {}, async (page) => {
  const host = await serve(site);
  try {
    host.instead.set('/shelf.json', Buffer.from(JSON.stringify({ format: 'treadle-shelf', version: 1, entries: [
      { kind: 'lesson', title: 'First lesson', note: 'Two plates', file: 'lessons/first.json' },
      { kind: 'job', title: 'Out of the folder', file: '../secret.json' },
      { kind: 'job', title: 'Of another host', file: 'https://example.org/x.json' },
    ] })));
    host.instead.set('/lessons/first.json', Buffer.from(named('Lesson one')));
    page.origin = host.origin;
    await mine(page);
    const before = await journals(page);
    await to_jobs(page);
    await until('the entry', () => control(page, 'button', 'Look at: First lesson').count());
    assert.equal(await control(page, 'button', /Out of the folder|Of another host/).count(), 0);
    await control(page, 'button', 'Look at: First lesson').click();
    await until('the lesson', async () => (await job_name(page)) === 'Lesson one');
    assert.deepEqual(await journals(page), before);
    assert.ok(!host.asked.some((path) => /secret/.test(path)), host.asked.join(' '));
    await rename(page, 'My lesson');
    await until('a job of mine', async () => (await job_ids(page)).length === 2);
  } finally {
    await host.close();
  }
});

test('a table from a spreadsheet is pasted, looked at row by row, and added in one step', {}, async (page) => {
  await mine(page);
  await to_jobs(page);
  await control(page, 'button', 'Paste a table of parts').click();
  const rows = ['Mark\tQty\tSection\tLength\tGrade',
    'X1\t4\tFB 3 x 1/2\t10 1/2 in\tA36',
    'X2\t2\tL 3 x 3 x 1/4\t2-Jan\tA36',
    'X3\t6\tFB 2 x 1/4\t1\' 6"\tA36'];
  await page.locator('#paste-text').fill(rows.join('\r\n'));
  await page.locator('#paste-take').click();
  await until('no unit is assumed', async () => /Add 0 parts/.test(await said(page)));
  await control(page, 'combobox', /^Numbers without a unit are/).selectOption('inches');
  await until('the rows', async () => /Add 2 parts/.test(await said(page)));
  assert.match(await said(page), /Row 3 refused|row 3/i);
  assert.match(await said(page), /date/);
  await control(page, 'button', 'Add 2 parts').click();
  await until('the parts', () => part_row(page, 'X3').count());
  assert.equal(await part_row(page, 'X2').count(), 0);
  await find(page, things.undo).click();
  await until('one step back', async () => (await part_row(page, 'X3').count()) === 0);
  assert.equal(await part_row(page, 'X1').count(), 0);
});

test('names of a file are shown and printed as text, whatever stands in them', {}, async (page) => {
  const evil = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
  const job = demo();
  job.name = evil;
  job.note = evil;
  job.parts[0].mark = evil;
  job.parts[0].note = evil;
  await mine(page);
  await to_jobs(page);
  await give_file(page, () => open_file(page).click(), 'evil.json', JSON.stringify(job));
  await until('the job', async () => (await job_name(page)) === evil);
  for (const name of ['Parts', 'Order', 'Bars', 'Sheets', 'Jobs']) await go(page, name);
  await go(page, 'Sheets');
  await find(page, things.look_at_sheet).click();
  const paper = page.frameLocator('#preview-frame').locator('body');
  await until('the sheet', async () => (await paper.innerText()).includes('<script>'));
  assert.equal(await paper.locator('script, img').count(), 0);
  assert.equal(await page.locator('#mirror script, #mirror img').count(), 0);
  assert.equal(await page.evaluate(() => window.hit), undefined);
  assert.deepEqual(await page.evaluate(() => window.csp_violations), []);
});
