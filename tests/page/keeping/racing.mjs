// Two tabs with one job. Many edits from both (a thousand with TREADLE_LONG=1), and none that a tab
// has shown is ever gone: with locks between the tabs, without, and where neither hears the other.
//
// Each tab counts the pieces of a part of its own upwards, one edit a step, and takes the turn
// whenever it is the other's. Whenever it has the turn it must find its own count as it left it.

import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { k_plain_name, on_bench } from '../forms/bench.mjs';
import { control, is_long, open, ready, site, test, until } from '../harness.mjs';
import { accept_notice, find, go, things, verdict_words } from '../words.mjs';
import { all_saved, job_ids, rename } from './stored.mjs';

const k_each = is_long ? 500 : 60;

/** Enters 1001, 1002 … as pieces of the part whose form is open. Answers how often it had to take
    the turn, and every count that was less than it had been. */
function count_up(page, mark, last) {
  return page.evaluate(
    async ([name, end]) => {
      const elements = (kind) => [...document.querySelectorAll(`#mirror ${kind}`)];
      const words = (one) => one.getAttribute('aria-label') ?? one.textContent;
      const key = (begin) => elements('button').find((one) => words(one).startsWith(begin));
      const shown = () => {
        const row = elements('button').find((one) => words(one).startsWith(`${name}, `));
        const found = row && / (\d+) pieces/.exec(words(row));
        return found ? Number(found[1]) : 0;
      };
      const soon = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
      const holds = async (question, ms) => {
        for (const until = performance.now() + ms; performance.now() < until; await soon(3))
          if (question()) return true;
        return question();
      };
      const lost = [];
      let turns = 0;
      for (let count = 1001; count <= end;) {
        if (key('Write here instead')) {
          await soon(40 + Math.random() * 120);
          const here = key('Write here instead');
          if (here) here.click();
          await holds(() => !key('Write here instead'), 6000);
          turns += 1;
          continue;
        }
        if (count > 1001 && !(await holds(() => key('Write here instead') || shown() >= count - 1, 1500)))
          lost.push(`${count - 1} became ${shown()}`);
        if (key('Write here instead')) continue;
        const field = elements('input').find((one) => one.getAttribute('aria-label') === 'Pieces');
        if (!field) { await soon(5); continue; }
        field.focus();
        field.value = String(count);
        field.dispatchEvent(new Event('input', { bubbles: true }));
        field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
        await holds(() => shown() === count || key('Write here instead'), 1500);
        if (shown() === count) count += 1;
      }
      return { turns, lost };
    },
    [mark, last],
  );
}

async function open_form(page, mark) {
  await find(page, things.part(mark)).click();
  await find(page, things.change_sizes(mark)).click();
  await until('the form', () => control(page, 'textbox', 'Pieces').count());
}

/** A window beside the page: a tab behind another one is given no frames. */
async function window_beside(page) {
  const [other] = await Promise.all([
    page.context().waitForEvent('page'),
    page.evaluate(() => { window.open(location.href, '_blank', 'popup,width=900,height=600'); }),
  ]);
  other.origin = page.origin;
  await ready(other);
  return other;
}

/** Both windows on one job, each with the form of a part of its own, both counting up at once. */
async function race(page) {
  await accept_notice(page);
  await rename(page, 'Race');
  await all_saved(page);
  await go(page, 'Parts');
  const other = await window_beside(page);
  await open_form(page, 'HB1');
  await go(other, 'Parts');
  await open_form(other, 'HB2');
  const last = 1000 + k_each;
  const [first, second] = await Promise.all([count_up(page, 'HB1', last), count_up(other, 'HB2', last)]);
  assert.deepEqual([...first.lost, ...second.lost], []);
  return { other, last, turns: first.turns + second.turns };
}

const has = async (page, mark, count) =>
  until(`${mark} has ${count}`, async () => (await verdict_words(page, mark)).includes(` ${count} pieces`));

/** One job with all of both. */
async function both_kept(page) {
  const { other, last, turns } = await race(page);
  assert.ok(turns > 2, `the turn changed ${turns} times`);
  await page.close();
  await other.reload();
  await ready(other);
  await has(other, 'HB1', last);
  await has(other, 'HB2', last);
  assert.equal((await job_ids(other)).length, 1);
}

const k_alone = { alone: true };

test('two tabs race with edits and lose none: localhost, with locks', k_alone, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    await open(page);
    assert.equal(await page.evaluate(() => typeof navigator.locks), 'object');
    await both_kept(page);
  }));

test('two tabs race with edits and lose none: plain http, without locks', k_alone, () =>
  on_bench({ name: k_plain_name }, async (bench) => {
    const page = await bench.tab();
    await open(page);
    assert.equal(await page.evaluate(() => typeof navigator.locks), 'undefined');
    await both_kept(page);
  }));

test('two tabs race with edits and lose none: the one-file copy', k_alone, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    page.origin = 'file://';
    const copy = join(site, readdirSync(site).find((name) => /^treadle-.*\.html$/.test(name)));
    await page.goto(pathToFileURL(copy).href);
    await ready(page);
    await both_kept(page);
  }));

test('two tabs that hear nothing of each other keep both ways', k_alone, () =>
  on_bench({ name: k_plain_name }, async (bench) => {
    await bench.context().addInitScript(() => { window.BroadcastChannel = undefined; });
    const page = await bench.tab();
    await open(page);
    const { other, last } = await race(page);
    await page.reload();
    await ready(page);
    await has(page, 'HB1', last);
    await other.reload();
    await ready(other);
    await has(other, 'HB2', last);
    assert.equal((await job_ids(page)).length, 2, 'a job, and one of the other tab');
  }));
