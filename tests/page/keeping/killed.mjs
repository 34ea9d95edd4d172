// The browser is killed right after "Saved" is shown; what was saved, the place and the step at the
// machine are there when it comes back.

import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { chromium } from 'playwright-core';

import { browser_path, control, is_long, ready, test, until } from '../harness.mjs';
import { accept_notice, find, go, k_part, place, things, verdict_words } from '../words.mjs';
import { all_saved } from './stored.mjs';

const k_times = is_long ? 20 : 4;

/** A browser of its own with a profile that outlives it; killing it takes all its processes. */
export async function own_browser(profile, more = []) {
  rmSync(join(profile, 'DevToolsActivePort'), { force: true });
  const child = spawn(
    browser_path(),
    ['--headless=new', '--no-sandbox', '--no-first-run', '--remote-debugging-port=0',
      '--disable-background-networking', '--disable-sync', '--disable-component-update',
      '--disable-renderer-backgrounding', '--disable-background-timer-throttling',
      '--disable-backgrounding-occluded-windows',
      `--user-data-dir=${profile}`, ...more, 'about:blank'],
    { detached: true, stdio: 'ignore' },
  );
  const port = await until('the browser', () => {
    const lines = readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
    return lines[1] ? lines[0] : '';
  }, 30_000);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const gone = new Promise((resolve) => child.once('exit', resolve));
  return {
    context: browser.contexts()[0],
    kill: async () => {
      process.kill(-child.pid, 'SIGKILL');
      await gone;
      await browser.close().catch(() => {});
    },
  };
}

async function open_in(browser, origin) {
  const page = await browser.context.newPage();
  page.origin = origin;
  await page.setViewportSize({ width: 1024, height: 768 });
  await page.goto(`${origin}/`);
  await ready(page);
  return page;
}

test('an edit that is said to be saved outlives the kill of the browser, each time', { alone: true }, async (outer) => {
  const profile = mkdtempSync(join(tmpdir(), 'treadle-kill-'));
  let there = 0;
  try {
    let browser = await own_browser(profile);
    let page = await open_in(browser, outer.origin);
    await accept_notice(page);
    for (let i = 1; i <= k_times; ++i) {
      const count = 100 + i;
      const at = i % 2 === 0 ? 'Order' : 'Sheets';
      await go(page, 'Parts');
      if ((await control(page, 'textbox', 'Pieces').count()) === 0)
        await find(page, things.change_sizes(k_part)).click();
      const field = control(page, 'textbox', 'Pieces');
      await field.fill(String(count));
      await field.press('Enter');
      await until('the count', async () => (await verdict_words(page)).includes(` ${count} pieces`));
      // What is saved last is edited in the place that is to be found again.
      await go(page, at);
      if (at === 'Sheets') {
        const note = control(page, 'textbox', 'Note');
        await note.fill(`Note ${i}`);
        await note.press('Enter');
      } else {
        await find(page, { role: 'button', name: /^Units/ }).click();
      }
      // A line "Saved" may still be that of the count: first the page has this edit, then it has saved.
      const edit = at === 'Sheets' ? 'note of the job' : 'units';
      await until('the edit', () => control(page, 'button', `Undo: ${edit}`).count());
      await all_saved(page);
      await browser.kill();
      browser = await own_browser(profile);
      page = await open_in(browser, outer.origin);
      const tab = page.getByRole('tab', { name: at });
      assert.equal(await tab.getAttribute('aria-selected'), 'true', `place after kill ${i}`);
      if (at === 'Sheets')
        assert.equal(await control(page, 'textbox', 'Note').inputValue(), `Note ${i}`);
      await go(page, 'Parts');
      assert.match(await verdict_words(page), new RegExp(` ${count} pieces`), `edit ${i}`);
      there += 1;
    }
    await browser.kill();
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
  assert.equal(there, k_times);
});

const step = (page, number) => page.getByText(new RegExp(`^step ${number} of \\d+$`)).first();
const count = (page) =>
  page.getByText(/^\d+ of \d+ (ticked|punched|cut|notched|bent|shaped)$/).first();

test('a step at the machine and its count outlive the kill of the browser', { alone: true }, async (outer) => {
  const profile = mkdtempSync(join(tmpdir(), 'treadle-kill-'));
  try {
    let browser = await own_browser(profile);
    let page = await open_in(browser, outer.origin);
    await accept_notice(page);
    await go(page, 'Order');
    await find(page, things.to_machine).click();
    await until('the first step', () => step(page, 1).isVisible());
    await control(page, 'button', /^Next step/).click();
    await until('the second step', () => step(page, 2).isVisible());
    await control(page, 'button', /^(Tick: |One piece more)/).click();
    await until('one tick', async () => (await count(page).textContent()).startsWith('1 of '));
    const said = await count(page).textContent();
    await page.waitForTimeout(300); // the tap is a transaction of its own, and nobody says when
    await browser.kill();
    browser = await own_browser(profile);
    page = await open_in(browser, outer.origin);
    await until('the line that says so', () => page.getByText(/^You were at step 2: 1 of/).count());
    await control(page, 'button', 'Go on', true).click();
    await until('the same step', () => step(page, 2).isVisible());
    assert.equal(await count(page).textContent(), said);
    await browser.kill();
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
});
