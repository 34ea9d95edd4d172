// A host that can be changed, a browser with a profile of its own, and sites of several builds.

import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { chromium } from 'playwright-core';

import { browser_args, browser_path, control, root, said, site, until, watch } from '../harness.mjs';
import { serve } from '../server.mjs';

export const k_plain_name = 'treadle.test'; // no name that a browser takes for the device itself
const k_named = `--host-resolver-rules=MAP ${k_plain_name} 127.0.0.1`;
// Until all is on the device. Browsers look for another worker at their lowest priority: on a machine
// that has other work it may be long.
export const k_kept_ms = 180_000;

const built = join(site, '..', 'parts');

/** The same wasm and script but for a remark in each: another build, that does the same. */
function remarked(folder, remark) {
  const wasm = join(folder, 'app.wasm');
  const words = Buffer.from(remark);
  const section = Buffer.concat([Buffer.from([0, words.length + 1, words.length]), words]);
  writeFileSync(wasm, Buffer.concat([readFileSync(wasm), section]));
  const script = join(folder, 'app.mjs');
  writeFileSync(script, `/* ${remark} */\n${readFileSync(script, 'utf8')}`);
}

/** Packs the built parts under another version: { folder, id, files, remove }. */
export function make_site(version) {
  const folder = mkdtempSync(join(tmpdir(), 'treadle-site-'));
  const parts = join(folder, 'parts');
  cpSync(built, parts, { recursive: true, filter: (path) => path === built || /\.(wasm|mjs|otf|png)$/.test(path) });
  remarked(parts, version);
  const out = join(folder, 'site');
  execFileSync(process.execPath, [join(root, 'web', 'pack.mjs'), '--parts', parts, '--out', out, '--version', version],
    { stdio: 'pipe' });
  const worker = readFileSync(join(out, 'sw.js'), 'utf8');
  const { id, files } = JSON.parse(/TREADLE_BUILD|(\{"id":.*\});/.exec(worker)[1]);
  return { folder: out, id, files: new Set(files.map(([name]) => name)),
    remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/**
 * A browser of its own. With a profile it can be started again; without, it opens no window of its
 * own, which would hold its background work (the look for another worker) back for minutes.
 */
async function launched(profile, args, options) {
  const how = { executablePath: browser_path(), chromiumSandbox: false, args: [...browser_args, k_named, ...args] };
  const screen = { viewport: { width: 1280, height: 800 }, ...options };
  if (profile) {
    const context = await chromium.launchPersistentContext(profile, { ...how, ...screen });
    return { context, close: () => context.close() };
  }
  const browser = await chromium.launch(how);
  return { context: await browser.newContext(screen), close: () => browser.close() };
}

/**
 * Gives `body` a bench: { host, tab(), restart() }. `name` is the host's in the address bar, `args` go
 * to the browser, `options` to its context; `sites` are removed afterwards.
 */
export async function on_bench({ folder = site, name = 'localhost', args = [], sites = [], options = {}, again = false }, body) {
  const profile = again ? mkdtempSync(join(tmpdir(), 'treadle-profile-')) : '';
  const host = await serve(folder);
  const origin = `http://${name}:${host.port}`;
  let browser = null;
  const launch = async () => { browser = await launched(profile, args, options); };
  const bench = {
    host,
    origin,
    context: () => browser.context,
    async tab() {
      const page = await watch(browser.context, await browser.context.newPage(), origin);
      page.loads = 0;
      page.on('load', () => { page.loads += 1; });
      return page;
    },
    async restart() {
      await browser.close();
      await launch();
    },
  };
  try {
    await launch();
    await body(bench);
  } finally {
    await browser?.close().catch(() => {});
    await host.close().catch(() => {});
    for (const one of sites) one.remove();
    if (profile) rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

export const build_of = (page) => page.evaluate(() => document.querySelector('meta[name=build]').content);
export const state_of = (page) => page.evaluate(() => document.documentElement.dataset.state);

/** Every file that the page has asked for since it opened, by the names of its site. */
export function loaded_by(page) {
  return page.evaluate(() => performance.getEntriesByType('resource')
    .map(({ name }) => new URL(name)).filter(({ protocol }) => /^http/.test(protocol))
    .map(({ pathname }) => pathname.slice(1))
    .filter((name) => !/^(build\.json|sw\.js)$/.test(name)));
}

export const works_offline = (page) =>
  until('it works offline', async () => /works offline/.test(await said(page)), k_kept_ms);
export const switch_key = (page) => control(page, 'button', /^Switch now/);
export const look_for_versions = (page) => page.evaluate(() => window.treadle_look_for_versions());
