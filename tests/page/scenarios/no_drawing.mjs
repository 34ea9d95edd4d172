// Without WebGL the page is the mirror itself; what stops the page says why and what to try.

import assert from 'node:assert/strict';

import { control, open, picture, site_file, test, until } from '../harness.mjs';
import { accept_notice, go, k_part, part_row, place, verdict_words } from '../words.mjs';

const without_webgl = () => {
  const get = HTMLCanvasElement.prototype.getContext;
  HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
    return /webgl/.test(kind) ? null : get.call(this, kind, ...rest);
  };
};

/** Ink on paper: the words that stand in an element can be seen. */
async function is_inked(locator) {
  return locator.evaluate((element) => {
    const style = getComputedStyle(element);
    const box = element.getBoundingClientRect();
    return style.opacity === '1' && !/, 0\)$/.test(style.color) && box.width > 4 && box.height > 4;
  });
}

for (const [name, viewport] of [['desk', { width: 1280, height: 800 }], ['tablet', { width: 800, height: 1280 }]]) {
  test(`without WebGL the main job can be done, ${name}`, { viewport }, async (page) => {
    await page.addInitScript(without_webgl);
    await open(page);
    const why = page.locator('#plain');
    await until('the line that says why', () => why.isVisible());
    assert.match(await why.textContent(), /Drawings are missing.*WebGL/);
    await accept_notice(page);
    assert.ok(await is_inked(part_row(page)), 'the first part has no ink');
    await picture(page, `no-webgl-${name}`);
    await control(page, 'button', new RegExp(`^Change sizes of ${k_part}`)).click();
    const thickness = control(page, 'textbox', 'Thickness');
    assert.ok(await is_inked(thickness), 'the field has no ink');
    await thickness.click();
    await page.keyboard.type('1/2');
    await page.keyboard.press('Enter');
    await until('the edit is taken', async () => /1\/2/.test(await verdict_words(page)));
    await picture(page, `no-webgl-sizes-${name}`);
    await go(page, 'Sheets');
    await until('print is offered', () => control(page, 'button', /^Print the worksheet/).isVisible());
    await picture(page, `no-webgl-sheets-${name}`);
    const labels = await page.evaluate(() => [...document.querySelectorAll('[data-label-of]')].every(
      (label) => document.querySelector(`[data-id="${CSS.escape(label.dataset.labelOf)}"]`)));
    assert.ok(labels, 'a label stands without its field');
  });
}

test('the graphics are lost and come back', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await page.evaluate(() => {
    window.graphics = document.getElementById('canvas').getContext('webgl2').getExtension('WEBGL_lose_context');
    window.graphics.loseContext();
  });
  await page.waitForTimeout(200);
  await page.evaluate(() => window.graphics.restoreContext());
  const frames = () => page.evaluate(() => Number(document.getElementById('stage').dataset.frames));
  const before = await frames();
  await go(page, 'Sheets');
  await until('frames again', async () => (await frames()) > before);
  await until('the place', () => control(page, 'button', /^Print the worksheet/).isVisible());
  assert.equal(await page.locator('#trouble').isVisible(), false);
});

test('graphics that stay away are told, with a way on', {}, async (page) => {
  await open(page);
  await page.evaluate(() =>
    document.getElementById('canvas').getContext('webgl2').getExtension('WEBGL_lose_context').loseContext());
  await until('the message', () => page.locator('#trouble').isVisible());
  assert.match(await page.locator('#trouble').textContent(), /graphics went away.*stored.*Reload/s);
});

/** The message that stands in place of the page, and nothing of the page's own error list. */
async function trouble(page) {
  const box = page.locator('#trouble');
  await until('a message', () => box.isVisible(), 30_000);
  // The browser names the missing file itself, now or later; that is the point here.
  page.faults.length = 0;
  Object.defineProperty(page.faults, 'push', { value: () => 0 });
  assert.equal(await page.locator('#splash').isVisible(), false);
  assert.ok(await box.getByRole('link', { name: 'Try again' }).isVisible());
  return box.textContent();
}

for (const file of ['app.mjs', 'app.wasm']) {
  test(`a missing ${file} is told`, {}, async (page) => {
    await page.route(`**/${site_file(file)}`, (route) => route.fulfill({ status: 404, body: 'not here' }));
    await page.goto(page.origin);
    assert.match(await trouble(page), /could not start.*missing or was blocked/s);
  });
}

test('WebAssembly that is blocked is told', {}, async (page) => {
  await page.addInitScript(() => {
    const refuse = () => Promise.reject(
      new WebAssembly.CompileError("Refused to compile because 'unsafe-eval' is not allowed"));
    WebAssembly.compile = refuse;
    WebAssembly.compileStreaming = refuse;
    WebAssembly.instantiate = refuse;
    WebAssembly.instantiateStreaming = refuse;
  });
  await page.goto(page.origin);
  assert.match(await trouble(page), /WebAssembly was blocked.*another browser/s);
});

test('a browser without WebAssembly is told', {}, async (page) => {
  await page.addInitScript(() => { delete window.WebAssembly; });
  await page.goto(page.origin);
  assert.match(await trouble(page), /cannot run the page.*WebAssembly/s);
});

test('a browser that knows no modules is told', {}, async (page) => {
  for (const file of ['boot.mjs', 'guard.js']) await page.route(`**/${site_file(file)}`, (route) => route.abort());
  await page.goto(page.origin);
  await page.addScriptTag({ url: `/${site_file('old.js')}` });
  assert.match(await trouble(page), /too old.*last five years/s);
});
