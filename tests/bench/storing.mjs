// Run as tests/bench/storing. Prints figures, and fails on none: they are those of the machine.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { chromium } from 'playwright-core';

import { browser_path, control, open, ready, root, site, until } from '../page/harness.mjs';
import { serve } from '../page/server.mjs';
import { accept_notice, go, place } from '../page/words.mjs';

const k_parts = Number(process.argv[2] ?? 5000);
const k_edits = 60;
const k_is_undrawn = process.argv[3] === 'undrawn'; // what it takes where drawing costs nothing

/** The demo's parts again and again, each copy with a mark of its own. */
function long_job() {
  const job = JSON.parse(readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8'));
  const parts = Array.from({ length: k_parts }, (_, i) => {
    const part = job.parts[i % job.parts.length];
    return { ...part, id: `copy${i}`, mark: `${part.mark}-${i}` };
  });
  return JSON.stringify({ ...job, name: 'Long', parts });
}

function figures(list) {
  const sorted = [...list].sort((a, b) => a - b);
  const at = (share) => (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN).toFixed(1);
  return `median ${at(0.5)}   p95 ${at(0.95)}   most ${at(1)} ms   (${sorted.length})`;
}

const server = await serve(site);
const browser = await chromium.launch({ executablePath: browser_path(), chromiumSandbox: false,
  args: ['--enable-precise-memory-info'] });
const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
const page = await context.newPage();
page.origin = server.origin;
// Of each writing transaction: when it was asked for, and when it was committed.
await page.addInitScript((is_undrawn) => {
  if (is_undrawn)
    for (const name of ['clear', 'drawElements']) WebGL2RenderingContext.prototype[name] = () => {};
  window.stored = [];
  for (const name of ['instantiate', 'instantiateStreaming']) {
    const make = WebAssembly[name];
    WebAssembly[name] = async (...all) => {
      const made = await make.apply(WebAssembly, all);
      const { exports } = made.instance ?? made;
      window.memory ??= Object.values(exports).find((one) => one instanceof WebAssembly.Memory);
      return made;
    };
  }
  const real = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...all) {
    const mode = all[1];
    const from = performance.now();
    const change = real.apply(this, all);
    let bytes = 0;
    if (mode === 'readwrite') {
      window.last = { add: (more) => { bytes += more; } };
      change.addEventListener('complete', () => window.stored.push({ from, ms: performance.now() - from, bytes }));
    }
    return change;
  };
  for (const name of ['put', 'add']) {
    const write = IDBObjectStore.prototype[name];
    IDBObjectStore.prototype[name] = function (value, ...rest) {
      window.last?.add(value?.length ?? 0);
      return write.call(this, value, ...rest);
    };
  }
}, k_is_undrawn);
await open(page);
await accept_notice(page);
await page.evaluate(() => {
  window.blocked = [];
  window.imported = 0;
  new PerformanceObserver((list) => list.getEntries().forEach((one) => window.blocked.push(one.duration)))
    .observe({ type: 'longtask' });
  new MutationObserver(() => {
    if (!window.imported && /Long/.test(document.querySelector('#mirror h1, #mirror [aria-level="1"]')?.textContent ?? ''))
      window.imported = performance.now();
  }).observe(document.getElementById('mirror'), { subtree: true, childList: true, characterData: true, attributes: true });
});
// The file is there before the clock starts: how it gets into the page is the driver's affair.
await page.evaluate((text) => { window.file = new File([text], 'long.json'); }, long_job());
await page.waitForTimeout(1000);
await page.evaluate(() => {
  window.blocked.length = 0;
  const transfer = new DataTransfer();
  transfer.items.add(window.file);
  window.given = performance.now();
  document.documentElement.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
});
await until('the job', () => page.evaluate(() => window.imported), 120_000);
const came = await page.evaluate(() => ({ shown: window.imported - window.given, longest: Math.max(0, ...window.blocked), all: window.blocked.reduce((sum, one) => sum + one, 0) }));
console.log(`A job of ${k_parts} parts (${(long_job().length / 1e6).toFixed(1)} MB):`);
console.log(`  from the file to the picture  ${came.shown.toFixed(0)} ms (long tasks ${came.all.toFixed(0)} ms, the longest ${came.longest.toFixed(0)} ms)`);
await page.waitForTimeout(3000);
const wrote = await page.evaluate(() => window.stored.splice(0));
console.log(`  stored in ${wrote.length} transactions, ${(wrote.reduce((sum, one) => sum + one.bytes, 0) / 1e6).toFixed(1)} MB, the longest ${Math.max(...wrote.map((one) => one.ms)).toFixed(0)} ms`);

await go(page, 'Parts');
await page.getByRole('button', { name: /^Change sizes of / }).first().click();
const field = control(page, 'textbox', 'Pieces');
await until('the form', () => field.count());
const steps = [];
const edits = [];
for (let i = 0; i < k_edits; ++i) {
  await page.evaluate(() => { window.stored.length = 0; });
  const from = await page.evaluate(([count]) => {
    const one = [...document.querySelectorAll('input')].find((each) => each.getAttribute('aria-label') === 'Pieces');
    one.focus();
    one.value = String(count);
    const now = performance.now();
    one.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    return now;
  }, [200 + i]);
  // The place is kept first; the step is the larger one with the head in it.
  const done = await until('stored', () => page.evaluate(() => {
    const step = window.stored.find((one) => one.bytes > 300 && one.bytes < 200_000);
    return step && { ms: step.ms, end: step.from + step.ms, bytes: step.bytes };
  }));
  steps.push(done.ms);
  edits.push(done.end - from);
  if (i === k_edits - 1) console.log(`  an edit stores ${done.bytes} bytes`);
}
console.log(`  its transaction    ${figures(steps)}`);
console.log(`  key to committed   ${figures(edits)}`);
await page.waitForTimeout(2500);
const room = await page.evaluate(async () => ({ ...(await navigator.storage.estimate()), heap: performance.memory?.usedJSHeapSize }));
const wasm = await page.evaluate(() => window.memory?.buffer.byteLength);
console.log(`  storage ${(room.usage / 1e6).toFixed(1)} MB, script heap ${(room.heap / 1e6).toFixed(1)} MB${wasm ? `, program ${(wasm / 1e6).toFixed(1)} MB` : ''}`);
const start = Date.now();
await page.reload();
await ready(page);
console.log(`  opened again in ${Date.now() - start} ms`);
await browser.close();
await server.close();
