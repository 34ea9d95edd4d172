// Opens the page in a headless browser, waits for what it says, and counts what passed.

import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { chromium } from 'playwright-core';

import { serve } from './server.mjs';

const here = dirname(fileURLToPath(import.meta.url));
export const root = join(here, '..', '..');
export const site = process.env.TREADLE_SITE ?? join(root, 'build', 'web', 'site');
/** The name that a part has in the site: `app.wasm` is `app.<hash>.wasm` there, modules end in .js. */
export function site_file(name, folder = site) {
  const dot = name.lastIndexOf('.');
  const ending = name.slice(dot).replace('.mjs', '.js');
  const pattern = new RegExp(`^[0-9a-f]{12}\\${ending}$`);
  const found = readdirSync(folder).filter((file) =>
    file.startsWith(`${name.slice(0, dot)}.`) && pattern.test(file.slice(dot + 1)));
  assert.equal(found.length, 1, `${name} in ${folder}: ${found}`);
  return found[0];
}

/** With TREADLE_LONG=1 the tests of many edits, kills and versions take as many as is claimed of
    them; without, so many that the test finds what breaks at once. */
export const is_long = process.env.TREADLE_LONG === '1';

export const pictures = join(here, 'out');

/** What a device asks for, by the look that the page answers with. */
export const looks = {
  light: { colorScheme: 'light', contrast: 'no-preference' },
  dark: { colorScheme: 'dark', contrast: 'no-preference' },
  sun: { colorScheme: 'light', contrast: 'more' },
};

const tests = [];
/**
 * Registers a test; `options` go to the browser context (viewport, touch, …), but for `alone`: the
 * test measures, and nothing may run beside it.
 */
export function test(name, options, body) {
  tests.push({ name, options, body });
}

const k_ready_ms = 30_000;
const k_answer_ms = 20_000; // two cores draw in software, beside another test
const k_test_ms = 400_000; // a machine with two cores may have other work
const k_side_by_side = Number(process.env.TREADLE_SIDE_BY_SIDE ?? 2);

/** Asks until it holds: the page draws on request, so an answer comes a frame or two later. */
export async function until(what, question, ms = k_answer_ms) {
  const end = Date.now() + ms;
  let last;
  for (;;) {
    try {
      last = await question();
      if (last) return last;
    } catch (error) {
      last = error.message;
    }
    if (Date.now() > end) assert.fail(`${what}: not within ${ms} ms, last ${JSON.stringify(last)}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Waits for the first complete frame. */
export async function ready(page) {
  await page.waitForFunction(() => document.documentElement.dataset.state === 'ready', null, {
    timeout: k_ready_ms,
  });
}

export async function open(page, path = page.path ?? '/') {
  await page.goto(page.origin + path);
  await ready(page);
}

/** A control by role and name, as a screen reader finds it. */
export function control(page, role, name, exact = false) {
  return page.getByRole(role, { name, exact }).first();
}

/** Everything the mirror says at this moment, one control a line. */
export async function said(page) {
  return page.locator('body').ariaSnapshot();
}

export async function picture(page, name) {
  mkdirSync(pictures, { recursive: true });
  await page.screenshot({ path: join(pictures, `${name}.png`) });
}

/** Hands a file to whatever asks for one when `press` is done. */
export async function give_file(page, press, name, text) {
  const asked = page.waitForEvent('filechooser', { timeout: k_answer_ms });
  await press();
  const chooser = await asked;
  const buffer = Buffer.from(text, 'utf8');
  await chooser.setFiles({ name, mimeType: 'application/json', buffer });
}

export function browser_path() {
  const known = [
    process.env.TREADLE_BROWSER,
    '/usr/bin/chromium',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
  ];
  return known.find((path) => path && existsSync(path)) ?? chromium.executablePath();
}

export const browser_args = [
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
];

/** Has a page remember everything that must not happen. */
export async function watch(context, page, origin) {
  context.setDefaultTimeout(k_answer_ms);
  page.origin = origin;
  page.faults = [];
  page.foreign = [];
  page.on('pageerror', (error) => page.faults.push(`error: ${error.message}`));
  page.on('console', (line) => {
    if (line.type() === 'error') page.faults.push(`console: ${line.text()}`);
  });
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(page.origin) && !/^(blob|data|about):/.test(url)) page.foreign.push(url);
  });
  await page.addInitScript(() => {
    window.csp_violations = [];
    document.addEventListener('securitypolicyviolation', (event) => {
      window.csp_violations.push(`${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  return page;
}

/** The page alone: what keeps it on the device is tested in forms/, and would answer for a host here. */
async function watched_page(browser, origin, options) {
  const context = await browser.newContext(
    { viewport: { width: 1280, height: 800 }, serviceWorkers: 'block', ...options });
  return { context, page: await watch(context, await context.newPage(), origin) };
}

async function run_one(browser, origin, { name, options, body }, say = 'FAIL') {
  const { alone, ...context_options } = options;
  const { context, page } = await watched_page(browser, origin, context_options);
  const from = Date.now();
  let clock;
  const late = new Promise((_, reject) => {
    clock = setTimeout(() => reject(new Error(`took longer than ${k_test_ms} ms`)), k_test_ms);
  });
  try {
    await Promise.race([body(page, context), late]);
    assert.deepEqual(page.faults, [], 'the page reported errors');
    console.log(`  pass  ${name}  (${((Date.now() - from) / 1000).toFixed(1)} s)`);
    return true;
  } catch (error) {
    console.log(`  ${say}  ${name}\n        ${String(error.message).split('\n').join('\n        ')}`);
    const file = `failed-${name.replace(/[^a-z0-9]+/gi, '-').slice(0, 60)}`;
    await picture(page, file).catch(() => {});
    return false;
  } finally {
    clearTimeout(clock);
    await context.close().catch(() => {});
  }
}

/** Opens the site and a browser for as long as `body(browser, origin)` takes. */
async function with_browser(body) {
  let browser;
  let server;
  try {
    assert.ok(existsSync(join(site, 'index.html')), 'no site: run `web/run --no-serve` first');
    server = await serve(site);
    browser = await chromium.launch({
      executablePath: browser_path(),
      chromiumSandbox: false,
      args: browser_args,
    });
    return await body(browser, server.origin);
  } finally {
    await browser?.close();
    await server?.close();
  }
}

/** Runs bodies in pages of their own, side by side: [{ name, result or error }]. */
export function with_pages(works) {
  return with_browser((browser, origin) =>
    Promise.all(works.map(async ({ name, options, body }) => {
      const { context, page } = await watched_page(browser, origin, options);
      try {
        return { name, result: await body(page, context) };
      } catch (error) {
        return { name, error };
      } finally {
        await context.close().catch(() => {});
      }
    })));
}

/**
 * Runs what is registered (or what `only` matches); prints the line that tests/run reads. What
 * failed beside another test is tried once more alone, and said: two cores that also draw in
 * software sometimes keep a page waiting for longer than a test thought possible.
 */
export async function run_all(only) {
  const chosen = tests.filter((one) => !only || one.name.includes(only));
  const again = [];
  let passed = 0;
  try {
    await with_browser(async (browser, origin) => {
      // Side by side, because a page mostly waits; what must be alone comes last, one by one.
      const waiting = chosen.filter((one) => !one.options.alone);
      const worker = async () => {
        for (let one = waiting.shift(); one; one = waiting.shift())
          if (await run_one(browser, origin, one, 'once')) passed += 1;
          else again.push(one);
      };
      await Promise.all(Array.from({ length: k_side_by_side }, worker));
      for (const one of [...chosen.filter((each) => each.options.alone), ...again])
        if (await run_one(browser, origin, one)) passed += 1;
    });
    if (again.length > 0) console.log(`  ${again.length} failed beside another test and ran again alone`);
  } catch (error) {
    console.log(`  FAIL  nothing could be opened: ${error.message}`);
  }
  console.log(`PAGE ${passed} passed, ${chosen.length - passed} failed`);
  return chosen.length > 0 && passed === chosen.length;
}
