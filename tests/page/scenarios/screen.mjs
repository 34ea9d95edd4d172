// How the screen looks and is held is a matter of the device, and is kept there.

import assert from 'node:assert/strict';

import { control, open, picture, ready, test, until } from '../harness.mjs';
import { accept_notice, go } from '../words.mjs';

const look = (page) => page.evaluate(() => document.documentElement.dataset.look);
const row = (page, name) => page.getByRole('button', { name, exact: true });

async function open_screen(page) {
  await go(page, 'Help');
  await control(page, 'button', 'Screen').click();
  await until('the form', () => control(page, 'heading', 'Screen').isVisible());
}

async function choose(page, group, name) {
  const key = page.getByRole('group', { name: group }).getByRole('button', { name, exact: true });
  await key.click();
  await until(`${name} is chosen`, async () => (await key.getAttribute('aria-pressed')) === 'true');
}

for (const [name, word] of [
  ['Dark', 'dark'],
  ['Sun', 'sun'],
]) {
  test(`the theme ${name} is kept over a reload, and no other is seen before`, {}, async (page) => {
    await open(page);
    await accept_notice(page);
    assert.equal(await look(page), 'light');
    await open_screen(page);
    await choose(page, 'Theme', name);
    await until('the theme', async () => (await look(page)) === word);
    await picture(page, `screen-${word}`);
    await page.waitForTimeout(200);
    await page.addInitScript(() => {
      window.looks = [];
      new MutationObserver(() => {
        const { state, look } = document.documentElement.dataset;
        if (state === 'ready') window.looks.push(look);
      }).observe(document, {
        attributes: true,
        subtree: true,
        attributeFilter: ['data-state', 'data-look'],
      });
    });
    await page.reload();
    await ready(page);
    await until('the form', () => control(page, 'heading', 'Screen').isVisible());
    assert.equal(await look(page), word);
    assert.deepEqual([...new Set(await page.evaluate(() => window.looks))], [word]);
  });
}

test('size of text and keys, hand and number pad are kept over a reload', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await open_screen(page);
  const before = (await row(page, 'Shop').boundingBox()).height;
  await choose(page, 'Size of the keys', 'Shop');
  await choose(page, 'Size of the text', '200 %');
  await choose(page, 'Hand', 'Left');
  await choose(page, 'Number pad', 'Always');
  await page.waitForTimeout(1500);
  await page.reload();
  await ready(page);
  await until('the form', () => control(page, 'heading', 'Screen').isVisible());
  for (const name of ['Shop', '200 %', 'Left', 'Always'])
    assert.equal(await row(page, name).getAttribute('aria-pressed'), 'true', name);
  const after = (await row(page, 'Shop').boundingBox()).height;
  assert.ok(after >= 112 && before <= 56, `${before} before, ${after} after`);
  await picture(page, 'screen-200');
});
