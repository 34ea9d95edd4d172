// The page in the distribution's Firefox: start, one edit, the printed document; and without WebGL.
//
//   node --experimental-websocket tests/page/firefox/run.mjs

import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { setTimeout as pause } from 'node:timers/promises';

import { serve } from '../server.mjs';
import { firefox } from './client.mjs';
import { display } from './display.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..', '..');
const site = process.env.TREADLE_SITE ?? join(root, 'build', 'web', 'site');
const pictures = join(here, '..', 'out');
const k_ms = 60_000;
const k_enter = '\uE007';
const k_control = '\uE009';

async function until(what, question) {
  for (const end = Date.now() + k_ms; ; await pause(100)) {
    const answer = await question();
    if (answer) return answer;
    assert.ok(Date.now() < end, `${what}: not within ${k_ms} ms`);
  }
}

const strokes = (text) => [...text].flatMap((value) =>
  [{ type: 'keyDown', value }, { type: 'keyUp', value }]);

/** The page as a mouse and a keyboard have it. */
function desk(browser) {
  const { evaluate, send, context } = browser;
  const find = (role, name) => `[...document.querySelectorAll('#mirror [data-id]')].find((one) =>
    one.matches(${JSON.stringify(role)}) &&
    new RegExp(${JSON.stringify(name)}).test(one.getAttribute('aria-label') ?? one.textContent))`;
  const box = (role, name) => evaluate(`(() => { const found = ${find(role, name)};
    if (!found) return null; found.scrollIntoView({ block: 'center' });
    const { x, y, width, height } = found.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 }; })()`);
  const act = (actions) => send('input.performActions', { context, actions });
  const desk = {
    words: (role, name) => evaluate(`(() => { const found = ${find(role, name)};
      return found ? found.getAttribute('aria-label') ?? found.textContent : null; })()`),
    async click(role, name) {
      await until(name, () => box(role, name));
      await pause(200); // the scroll into sight is drawn
      const { x, y } = await box(role, name);
      await act([{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions: [
        { type: 'pointerMove', x: Math.round(x), y: Math.round(y) },
        { type: 'pointerDown', button: 0 }, { type: 'pointerUp', button: 0 }] }]);
    },
    /** In place of what stands there: without a window manager no focus event selects it. */
    type: (text) => act([{ type: 'key', id: 'keys', actions: [
      { type: 'keyDown', value: k_control }, ...strokes('a'), { type: 'keyUp', value: k_control },
      ...strokes(text)] }]),
    async picture(name) {
      const { data } = await send('browsingContext.captureScreenshot', { context });
      mkdirSync(pictures, { recursive: true });
      writeFileSync(join(pictures, `firefox-${name}.png`), Buffer.from(data, 'base64'));
    },
  };
  return desk;
}

async function open(browser, origin) {
  const faults = [];
  browser.on(({ method, params }) => {
    if (method === 'log.entryAdded' && params.level === 'error') faults.push(params.text);
  });
  const { context, send } = browser;
  await send('session.subscribe', { events: ['log.entryAdded'] });
  await send('script.addPreloadScript', { functionDeclaration:
    '() => { window.print = () => { window.top.prints = (window.top.prints ?? 0) + 1; }; }' });
  await send('browsingContext.setViewport', { context, viewport: { width: 1280, height: 800 } });
  await send('browsingContext.navigate', { context, url: `${origin}/`, wait: 'complete' });
  return faults;
}

const state = (browser) => browser.evaluate('document.documentElement.dataset.state');

async function start_edit_print(browser, origin) {
  const faults = await open(browser, origin);
  await until('the first frame', async () => (await state(browser)) === 'ready');
  const { words, click, type, picture } = desk(browser);
  await click('button', '^Understood');
  await until('the job', () => words('button', '^HB1, '));
  await click('button', '^Change sizes of HB1');
  await click('input', '^Thickness$');
  await until('the field has the keyboard', () =>
    browser.evaluate(`document.activeElement.getAttribute('aria-label') === 'Thickness'`));
  await type('2 in' + k_enter);
  await until('the verdict', async () => /does not fit/.test(await words('button', '^HB1, ')));
  await picture('edit');
  await click('[role=tab]', '^Sheets$');
  await click('button', '^Print the worksheet');
  await until('a print', async () => (await browser.evaluate('window.prints ?? 0')) === 1);
  const paper = await browser.evaluate(
    `document.getElementById('print-frame').contentDocument.body.textContent`);
  const job = JSON.parse(readFileSync(join(root, 'assets', 'demo', 'demo-inch.json'), 'utf8'));
  for (const { mark } of job.parts) assert.ok(paper.includes(mark), `no ${mark} on paper`);
  await until('the page says whether it works offline', () =>
    browser.evaluate(`/works offline|online only/.test(document.getElementById('mirror').innerText)`));
  const frames = () => browser.evaluate(`document.getElementById('stage').dataset.frames`);
  await pause(1500);
  const drawn = await frames();
  await pause(5000);
  assert.equal(await frames(), drawn, 'frames are drawn unasked');
  assert.deepEqual(faults, [], 'the page reported errors');
}

/** Firefox without a screen has no WebGL 2: the page must say so and offer what works without. */
async function without_graphics(browser, origin) {
  await open(browser, origin);
  const has = await browser.evaluate(`Boolean(document.createElement('canvas').getContext('webgl2'))`);
  if (has) throw new Error('this Firefox has WebGL 2 without a screen: nothing was tested');
  await until('words in place of a picture', async () =>
    /WebGL/.test(await browser.evaluate('document.body.innerText')));
  await desk(browser).picture('without-webgl');
}

const works = [
  { name: 'Firefox: start, one edit, the printed document, then no frame', headless: false, body: start_edit_print },
  { name: 'Firefox without WebGL 2 says so', headless: true, body: without_graphics },
];

async function run(origin, { name, headless, body }) {
  let screen;
  let browser;
  try {
    screen = headless ? null : await display(1300, 920);
    browser = await firefox({ headless, env: screen ? { DISPLAY: screen.name } : {} });
    await body(browser, origin);
    console.log(`  pass  ${name}`);
    return true;
  } catch (error) {
    console.log(`  FAIL  ${name}\n        ${String(error.message).replaceAll('\n', '\n        ')}`);
    return false;
  } finally {
    await browser?.close();
    await screen?.close();
  }
}

assert.ok(existsSync(join(site, 'index.html')), 'no site: run `web/run --no-serve` first');
const server = await serve(site);
let passed = 0;
for (const work of works) passed += (await run(server.origin, work)) ? 1 : 0;
await server.close();
console.log(`FIREFOX ${passed} passed, ${works.length - passed} failed`);
process.exitCode = passed === works.length ? 0 : 1;
