// The main job in the three forms of one build: kept on the device, on plain http, and as one file.
// Nothing is asked of another host, and the policy is never broken.

import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { control, open, picture, ready, said, site, test, until } from '../harness.mjs';
import { reader } from '../hands/reader.mjs';
import { main_job } from '../main_job.mjs';
import { accept_notice, go } from '../words.mjs';
import { k_plain_name, loaded_by, on_bench, works_offline } from './bench.mjs';

const k_most_bytes = 3 * 1024 * 1024;

const one_file = () => join(site, readdirSync(site).find((name) => /^treadle-.*\.html$/.test(name)));

async function nothing_wrong(page) {
  assert.deepEqual(page.foreign, [], 'something was asked of another host');
  assert.deepEqual(await page.evaluate(() => window.csp_violations), []);
  assert.deepEqual(page.faults, []);
}

test('the main job on localhost, kept on the device', { alone: true }, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    await main_job(page, reader);
    assert.equal(await page.evaluate(() => isSecureContext), true);
    await works_offline(page);
    await nothing_wrong(page);
  }));

test('the main job on plain http, which says what it cannot do', { alone: true }, () =>
  on_bench({ name: k_plain_name }, async (bench) => {
    const page = await bench.tab();
    await main_job(page, reader);
    assert.equal(await page.evaluate(() => isSecureContext), false);
    await until('online only', async () => /online only/.test(await said(page)));
    const [copy] = await Promise.all([page.waitForEvent('download'),
      control(page, 'button', 'Take the one-file copy').click()]);
    assert.match(copy.suggestedFilename(), /^treadle-[\d.]+\.html$/);
    assert.deepEqual(readFileSync(await copy.path()), readFileSync(one_file()));
    await picture(page, 'forms-plain-http');
    // The line of the next action can be dismissed as well; this is the one about this form.
    const dismiss = control(page, 'button', 'Dismiss this line; Help has it under About', true);
    await dismiss.click();
    // A click is taken by the frame after it: what is left before that was never pressed.
    await until('the line is gone', async () => (await dismiss.count()) === 0);
    await page.reload();
    await ready(page);
    await until('online only', async () => /online only/.test(await said(page)));
    assert.equal(await control(page, 'button', 'Take the one-file copy').count(), 0);
    await nothing_wrong(page);
  }));

test('the main job in the one-file copy on file://', { alone: true }, () =>
  on_bench({}, async (bench) => {
    const page = await bench.tab();
    page.origin = 'file://';
    page.path = pathToFileURL(one_file()).pathname;
    await main_job(page, reader);
    assert.match(await said(page), /what this browser keeps of it is no record\. Save the file/);
    await picture(page, 'forms-one-file');
    assert.deepEqual(await loaded_by(page), [], 'it asked for a file');
    assert.deepEqual(bench.host.asked, []);
    await nothing_wrong(page);
    // Its cutter ran beside the page, not on it.
    assert.ok(page.workers().length > 0, 'no worker was started');
  }));

test('the one-file copy is small, strict and complete', {}, async (page) => {
  const text = readFileSync(one_file(), 'utf8');
  assert.ok(text.length <= k_most_bytes, `${text.length} bytes`);
  const policy = /Content-Security-Policy" content="([^"]*)"/.exec(text)[1];
  assert.match(policy, /^default-src 'none'; script-src 'sha256-[^']+' 'sha256-[^']+' 'wasm-unsafe-eval';/);
  assert.doesNotMatch(policy, /unsafe-inline|'unsafe-eval'|connect-src|https?:/);
  assert.doesNotMatch(text.slice(0, 4000), /<link rel="(manifest|stylesheet|modulepreload)"/);
  await page.goto(pathToFileURL(one_file()).href);
  await ready(page);
  await accept_notice(page);
  await go(page, 'Help');
  await control(page, 'button', 'About', true).click();
  await until('its build', async () => /Version \d[^]*build [0-9a-f]{12}, made from sources [0-9a-f]{12}/.test(await said(page)));
  assert.equal(await control(page, 'button', 'Take the one-file copy').count(), 0);
  const [licences] = await Promise.all([page.context().waitForEvent('page'),
    control(page, 'button', 'Read the licences').click()]);
  await until('the licences', async () => /Omar Cornut/.test(await licences.locator('body').innerText()));
});

test('licences and build stand under About', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await go(page, 'Help');
  await control(page, 'button', 'About', true).click();
  const build = await page.evaluate(() => document.querySelector('meta[name=build]').content);
  await until('the build', async () => (await said(page)).includes(`build ${build}`));
  await picture(page, 'forms-about');
  const [licences] = await Promise.all([page.context().waitForEvent('page'),
    control(page, 'button', 'Read the licences').click()]);
  const words = await licences.locator('body').innerText();
  for (const owner of [/Omar Cornut/, /Niels Lohmann/, /SIL OPEN FONT LICENSE/i, /Jean-loup Gailly/, /Nayuki/, /Rich Felker/])
    assert.match(words, owner);
});
