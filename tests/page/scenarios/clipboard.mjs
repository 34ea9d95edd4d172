// Copying on a plain http address, where browsers hide the newer way, and what is left if all fails.

import assert from 'node:assert/strict';

import { chromium } from 'playwright-core';

import { browser_path, control, ready, test, until } from '../harness.mjs';
import { accept_notice } from '../words.mjs';

/** Opens the page under a name that is not this machine's own: plain http, no secure context. */
async function on_plain_http(page, body) {
  const browser = await chromium.launch({
    executablePath: browser_path(),
    chromiumSandbox: false,
    args: ['--no-first-run', '--disable-background-networking', '--host-resolver-rules=MAP shop.test 127.0.0.1'],
  });
  try {
    const other = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await other.goto(page.origin.replace('localhost', 'shop.test'));
    await ready(other);
    assert.equal(await other.evaluate(() => isSecureContext), false);
    assert.equal(await other.evaluate(() => typeof navigator.clipboard), 'undefined');
    await accept_notice(other);
    await control(other, 'button', /^Operation 3:/).click();
    await control(other, 'button', /^Show working/).click();
    await body(other, control(other, 'button', 'Copy the working'));
  } finally {
    await browser.close();
  }
}

test('the working is copied on plain http', {}, async (page) => {
  await on_plain_http(page, async (other, copy) => {
    await other.evaluate(() => document.addEventListener('copy', () => {
      window.copied = document.activeElement.value;
    }, true));
    await copy.click();
    await until('it is said', async () => /The working is on the clipboard/.test(await other.locator('#mirror').textContent()));
    assert.match(await other.evaluate(() => window.copied), /.{20}\n/);
  });
});

test('a copy that is refused leaves the text selected in a box', {}, async (page) => {
  await on_plain_http(page, async (other, copy) => {
    await other.evaluate(() => { document.execCommand = () => false; });
    await copy.click();
    const box = other.getByRole('dialog', { name: 'Copy this text yourself' });
    await until('the box', () => box.isVisible());
    const selected = await other.evaluate(() => {
      const text = document.activeElement;
      return text.value.slice(text.selectionStart, text.selectionEnd) === text.value && text.value.length > 20;
    });
    assert.ok(selected, 'the text is not selected');
    await other.keyboard.press('Escape');
    await until('it goes', async () => !(await box.isVisible()));
    assert.equal(await other.evaluate(() => document.activeElement.textContent), 'Copy the working');
  });
});
