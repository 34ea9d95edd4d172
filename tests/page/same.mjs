// One core, two programs: what the page saves is what the command prints, byte for byte.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { control, give_file, open, pictures, root, test, until } from './harness.mjs';
import { accept_notice, go, open_file, save_file, verdict_words } from './words.mjs';

const command = process.env.TREADLE_COMMAND ?? join(root, 'build', 'release', 'treadle');
const demo = (name) => join(root, 'assets', 'demo', name);

async function downloaded(page, button) {
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return readFileSync(await download.path(), 'utf8');
}

const save_plan = (page) => control(page, 'button', /^Save the plan as JSON/);
const save_page = (page) => control(page, 'button', /^Save the worksheet as a web page/);

for (const [name, first] of [['demo-inch.json', 'HB1'], ['demo-metric.json', null]]) {
  test(`page and command make the same plan of ${name}`, {}, async (page) => {
    await open(page);
    await accept_notice(page);
    await go(page, 'Sheets');
    await give_file(page, () => open_file(page).click(), name, readFileSync(demo(name), 'utf8'));
    const job = JSON.parse(readFileSync(demo(name), 'utf8'));
    const mark = first ?? job.parts[0].mark;
    await go(page, 'Parts');
    await until('the job is open', async () => (await verdict_words(page, mark)).startsWith(mark));
    await go(page, 'Sheets');
    const plan = execFileSync(command, ['plan', demo(name)], { encoding: 'utf8', maxBuffer: 1e8 });
    assert.equal((await downloaded(page, save_plan(page))).trim(), plan.trim());
    const saved = join(pictures, `same-${name}`);
    writeFileSync(saved, await downloaded(page, save_file(page)));
    const again = execFileSync(command, ['plan', saved], { encoding: 'utf8', maxBuffer: 1e8 });
    assert.equal(again, plan);
  });
}

for (const name of ['demo-inch.json', 'demo-metric.json'])
  test(`page and command write the same worksheet of ${name}`, {}, async (page) => {
    await open(page);
    await accept_notice(page);
    await go(page, 'Sheets');
    if (name !== 'demo-inch.json') {
      await give_file(page, () => open_file(page).click(), name, readFileSync(demo(name), 'utf8'));
      const { name: title } = JSON.parse(readFileSync(demo(name), 'utf8'));
      await until('the job is open', () => page.locator('#mirror h1', { hasText: title }).isVisible());
      await go(page, 'Parts');
      await go(page, 'Sheets');
    }
    const saved = await downloaded(page, save_page(page));
    const [, date] = / · ([^·<]+) · job [A-Z2-9]{6}</.exec(saved); // the core knows no day
    const out = join(pictures, `same-${name}.html`);
    execFileSync(command,
      ['sheet', demo(name), '--out', out, '--date', date, '--link-base', `${page.origin}/`]);
    assert.equal(saved, readFileSync(out, 'utf8'));
  });
