// Run as tests/bench/page_frames. Prints figures, and fails on none: they are those of the machine.

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { chromium } from 'playwright-core';

import { control, open, ready, root, site, until } from '../page/harness.mjs';
import { serve } from '../page/server.mjs';
import { accept_notice, go, place } from '../page/words.mjs';

const k_parts = 1000;
const k_frames = 60;
const k_edits = 25;

/** The demo's parts again and again, each copy with a mark of its own. */
function long_job() {
  const job = JSON.parse(readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8'));
  const parts = Array.from({ length: k_parts }, (_, i) => {
    const part = job.parts[i % job.parts.length];
    return { ...part, id: `copy${i}`, mark: `${part.mark}-${i}` };
  });
  return JSON.stringify({ ...job, parts });
}

function figures(list) {
  const sorted = [...list].sort((a, b) => a - b);
  const at = (share) => (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN).toFixed(1);
  return `median ${at(0.5).padStart(6)}   p95 ${at(0.95).padStart(6)}   most ${at(1).padStart(6)} ms   (${sorted.length})`;
}

/** Notes each frame's CPU time, and when it came. */
async function watch(page) {
  await page.evaluate(() => {
    const stage = document.getElementById('stage');
    window.frames_seen = [];
    new MutationObserver(() => {
      window.frames_seen.push({ at: performance.now(), ms: Number(stage.dataset.frameMs) });
    }).observe(stage, { attributes: true, attributeFilter: ['data-frames'] });
    for (const kind of ['keydown', 'pointerup', 'wheel'])
      window.addEventListener(kind, (event) => { window.input_at = event.timeStamp; }, true);
  });
}

const seen = (page) => page.evaluate(() => window.frames_seen.splice(0));

/** Still for a while: nothing is drawn any more. */
async function rest(page) {
  let before = -1;
  await until('rest', async () => {
    const now = await page.locator('#stage').getAttribute('data-frames');
    const same = now === before;
    before = now;
    if (!same) await page.waitForTimeout(200);
    return same;
  }, 120_000);
  await seen(page);
}

async function frames_while(page, act) {
  await rest(page);
  for (let i = 0; i < k_frames; i += 1) {
    await act(i);
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  }
  return (await seen(page)).map((frame) => frame.ms);
}

async function frames_of_view(page, name, x, y) {
  await page.mouse.move(x, y);
  const hover = await frames_while(page, (i) => page.mouse.move(x, y + (i % 2) * 120));
  const wheel = await frames_while(page, (i) => page.mouse.wheel(0, i % 20 < 10 ? 137 : -137));
  console.log(`  ${name.padEnd(28)} hover  ${figures(hover)}`);
  console.log(`  ${''.padEnd(28)} scroll ${figures(wheel)}`);
}

/** Notes how long each transaction that writes takes, and how much it writes. */
function watch_store() {
  window.transactions_seen = [];
  let now = null;
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (names, mode, options) {
    const made = transaction.call(this, names, mode, options);
    if (mode !== 'readwrite') return made;
    const one = { began: performance.now(), bytes: 0 };
    now = one;
    made.addEventListener('complete', () => {
      window.transactions_seen.push({ ms: performance.now() - one.began, bytes: one.bytes });
    });
    return made;
  };
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (value, key) {
    now.bytes += value.length;
    return put.call(this, value, key);
  };
}

/** Edits of one part: from the key to the first frame and to the one that shows it, and storing. */
async function edits(page) {
  const pieces = control(page, 'textbox', 'Pieces');
  const lists = { first: [], shown: [], cpu: [], stored: [], bytes: [] };
  await rest(page);
  await page.evaluate(() => window.transactions_seen.splice(0));
  for (let i = 0; i < k_edits; i += 1) {
    await pieces.fill(String(20 + i));
    await page.waitForTimeout(1500); // what was typed is kept as part of the place
    await seen(page);
    await page.evaluate(() => window.transactions_seen.splice(0));
    await pieces.press('Enter');
    await page.waitForTimeout(400);
    const began = await page.evaluate(() => window.input_at);
    const frames = await seen(page);
    const [stored] = await page.evaluate(() => window.transactions_seen.splice(0));
    if (frames.length < 2 || !stored) continue;
    lists.first.push(frames[0].at - began);
    lists.shown.push(frames[1].at - began);
    lists.cpu.push(frames[0].ms);
    lists.stored.push(stored.ms);
    lists.bytes.push(stored.bytes);
  }
  return lists;
}

async function with_long_job(page) {
  await accept_notice(page);
  await go(page, 'Sheets');
  const asked = page.waitForEvent('filechooser');
  await control(page, 'button', /^Open file/).click();
  const buffer = Buffer.from(long_job(), 'utf8');
  await (await asked).setFiles({ name: 'long.json', mimeType: 'application/json', buffer });
  await until('the long job', () => page.evaluate(() => /-999|-0,/.test(document.body.textContent)), 60_000);
}

/** A part in the middle of the list is chosen, with its sizes open. */
async function choose_middle(page) {
  const list = page.getByRole('group', { name: 'Parts of the job' });
  await list.evaluate((element) => element.scrollTo(0, element.scrollHeight / 2));
  await rest(page);
  const box = await list.boundingBox();
  await page.mouse.click(box.x + 40, box.y + box.height / 2);
  await control(page, 'button', /^Change sizes of/).click();
  await rest(page);
  return { x: box.x + 60, y: box.y + 120 };
}

const browser = await chromium.launch({
  executablePath: [process.env.TREADLE_BROWSER, '/usr/bin/chromium', '/usr/bin/google-chrome'].find(
    (path) => path && existsSync(path),
  ),
  chromiumSandbox: false,
});
const server = await serve(site);
const context = await browser.newContext(
  { viewport: { width: 1280, height: 800 }, serviceWorkers: 'block' });
const page = await context.newPage();
page.origin = server.origin;
await page.addInitScript(watch_store);
await open(page);
await watch(page);
await with_long_job(page);
await go(page, 'Parts');
const { x, y } = await choose_middle(page);
const nodes = await page.locator('#mirror [data-id]').count();
console.log(`${k_parts} parts, ${nodes} elements in the mirror; CPU time of a frame:`);
await frames_of_view(page, 'Parts, one of the middle', x, y);
const lists = await edits(page);
for (const name of ['Order', 'Bars', 'Limits', 'Shop', 'Sheets']) {
  await go(page, name);
  await frames_of_view(page, name, 500, 400);
}
console.log('An edit of one part:');
console.log(`  frame that takes it, CPU     ${figures(lists.cpu)}`);
console.log(`  key to first frame           ${figures(lists.first)}`);
console.log(`  key to the frame that shows  ${figures(lists.shown)}`);
console.log(`  transaction, to its end      ${figures(lists.stored)}`);
console.log(`  bytes stored                 ${Math.max(...lists.bytes)} at most`);
await browser.close();
await server.close();
