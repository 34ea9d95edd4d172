// Cold start of the page beside that of a bare Dear ImGui page: median of alternating runs, each in
// a fresh browser context, and where the time goes.

import { chromium } from 'playwright-core';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { browser_path } from '../page/harness.mjs';
import { serve } from '../page/server.mjs';

const k_aim = 1.3; // times the bare page
const [folder, asked] = process.argv.slice(2);
const runs = Number(asked ?? 15);

/** Runs before any script of the page: notes when each part is over. */
function note_parts() {
  const note = (name) => performance.getEntriesByName(name).length || performance.mark(name);
  for (const way of ['instantiateStreaming', 'instantiate']) {
    const real = WebAssembly[way];
    WebAssembly[way] = (...given) => {
      note('asks for the program');
      return real.apply(WebAssembly, given).then((made) => {
        note('compiled');
        return made;
      });
    };
  }
  const context = HTMLCanvasElement.prototype.getContext;
  HTMLCanvasElement.prototype.getContext = function (...given) {
    note('main has begun');
    const made = context.apply(this, given);
    note('has a context');
    return made;
  };
  const draw = WebGL2RenderingContext.prototype.drawElements;
  WebGL2RenderingContext.prototype.drawElements = function (...given) {
    // A frame is over when its callback is: what follows it runs in the next task.
    if (!performance.getEntriesByName('first frame').length) {
      note('first draw');
      const channel = new MessageChannel();
      channel.port1.onmessage = () => note('first frame');
      channel.port2.postMessage(0);
      WebGL2RenderingContext.prototype.drawElements = draw;
    }
    return draw.apply(this, given);
  };
}

/** Runs there too: the first frame is usable once the mirror holds the job's controls. */
function note_usable() {
  const watch = new MutationObserver(() => {
    if (document.querySelectorAll('#mirror button').length < 5) return;
    performance.mark('usable');
    watch.disconnect();
  });
  watch.observe(document, { subtree: true, childList: true });
}

const k_parts = ['asks for the program', 'downloaded', 'compiled', 'main has begun', 'has a context', 'first draw', 'first frame', 'usable'];

async function one_start(browser, origin, is_ours) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.addInitScript(note_parts);
  if (is_ours) await page.addInitScript(note_usable);
  await page.goto(`${origin}/`);
  const end = is_ours ? 'usable' : 'first frame';
  await page.waitForFunction((name) => performance.getEntriesByName(name).length, end);
  const times = await page.evaluate(() => ({
    ...Object.fromEntries(performance.getEntriesByType('mark').map(({ name, startTime }) => [name, startTime])),
    downloaded: performance.getEntriesByType('resource').find(({ name }) => name.endsWith('.wasm')).responseEnd,
  }));
  await context.close();
  return { usable: times['first frame'], ...times };
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const middle = (all, part) => median(all.map((times) => times[part]));

const bare = join(folder, 'bare');
for (const needed of [join(bare, 'app.wasm'), join(folder, 'site', 'index.html')]) {
  if (existsSync(needed)) continue;
  console.log(`${needed} is not built`);
  process.exit(1);
}
writeFileSync(join(bare, 'index.html'), '<!doctype html><html lang="en"><title>Bare</title>'
  + '<canvas id="canvas" width="640" height="480"></canvas>'
  + '<script type="module">import program from "./app.mjs"; program();</script></html>\n');

const pages = {
  bare: { server: await serve(bare), all: [] },
  ours: { server: await serve(join(folder, 'site')), all: [] },
};
const browser = await chromium.launch({ executablePath: browser_path(), chromiumSandbox: false });
for (let run = -1; run < runs; ++run) {
  for (const one of Object.values(pages)) {
    const times = await one_start(browser, one.server.origin, one === pages.ours);
    if (run >= 0) one.all.push(times); // the first start of all also starts the graphics
  }
}
await browser.close();
for (const { server } of Object.values(pages)) await server.close();

console.log(`${runs} cold starts each, medians in ms since the navigation\n`);
console.log(`${'over at'.padEnd(24)}${'bare'.padStart(8)}${'ours'.padStart(8)}${'more'.padStart(8)}`);
for (const part of k_parts) {
  const [b, o] = [middle(pages.bare.all, part), middle(pages.ours.all, part)];
  console.log(`${part.padEnd(24)}${b.toFixed(1).padStart(8)}${o.toFixed(1).padStart(8)}${(o - b).toFixed(1).padStart(8)}`);
}
const ratio = middle(pages.ours.all, 'usable') / middle(pages.bare.all, 'usable');
console.log(`\nours takes ${ratio.toFixed(2)} times the bare page (aim ${k_aim})`);
