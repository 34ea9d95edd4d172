// The search: by key and by touch, what it finds and what it opens.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, part_row } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);
const sheet = (page) => page.getByRole('dialog', { name: 'Find' });
const field = (page) => sheet(page).getByRole('textbox').first();
const found = (page, name) => sheet(page).getByRole('button', { name }).first();

async function start(page) {
  await open(page);
  await accept_notice(page);
}

/** Opens the search with the keyboard; the letters go on into its field. */
async function find(page, words) {
  await page.keyboard.press('Control+k');
  await until('the search', () => field(page).evaluate((one) => one === document.activeElement));
  if (words) await page.keyboard.type(words);
}

const place_is = (page, name) => async () =>
  (await page.getByRole('tab', { name }).first().getAttribute('aria-selected')) === 'true';

test('Ctrl+K, a mark and Enter open the part', {}, async (page) => {
  await start(page);
  await page.getByRole('tab', { name: 'Shop' }).click();
  await find(page, 'hg1');
  await until('the part', () => found(page, /^HG1 /).isVisible());
  await page.keyboard.press('Enter');
  await until('it is closed', async () => (await sheet(page).count()) === 0);
  await until('Parts', place_is(page, 'Parts'));
  await until('the part', () => control(page, 'heading', 'HG1').isVisible());
  await until('its row has the keyboard', () =>
    part_row(page, 'HG1').evaluate((row) => row === document.activeElement));
});

test('a size finds the same holes in fractions, decimals and millimetres', {}, async (page) => {
  await start(page);
  const titles = [];
  for (const size of ['punch 13/16', 'punch 0.8125', 'punch 20.64 mm', 'PUNCH 13/16"']) {
    await find(page, size);
    await until('a punch', () => found(page, /^Punch 13\/16 round\. /).isVisible());
    titles.push(await sheet(page).getByRole('button', { name: /^Punch 13\/16/ }).count());
    await page.keyboard.press('Escape');
    await until('it is closed', async () => (await sheet(page).count()) === 0);
  }
  assert.ok(titles.every((count) => count === titles[0]), JSON.stringify(titles));
});

test('arrows walk from the field into the lines and back', {}, async (page) => {
  await start(page);
  await find(page, 'tonnage');
  await until('figures', () => found(page, /^Tonnage/).isVisible());
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  const second = await sheet(page).getByRole('button', { name: /\. / }).nth(1).textContent();
  await until('the second line', () =>
    page.evaluate((name) => document.activeElement?.tagName === 'BUTTON' && document.activeElement.textContent === name,
      second));
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await until('the field again', () => field(page).evaluate((one) => one === document.activeElement));
});

test('a figure opens its working, scrolled to it', { viewport: { width: 1024, height: 768 } }, async (page) => {
  await start(page);
  await find(page, 'bend deduction');
  await until('the figure', () => found(page, /^Bend deduction\. Working of /).isVisible());
  await picture(page, 'find-figure');
  await found(page, /^Bend deduction\. Working of /).click();
  const heading = control(page, 'heading', /^What a bend takes off/);
  await until('its working', () => heading.isVisible());
  const box = await until('in sight', async () => {
    const at = await heading.boundingBox();
    return at && at.y > 100 && at.y < 400 && at;
  });
  assert.ok(box.x > 300);
});

test('a tool, a place and a command are opened', {}, async (page) => {
  await start(page);
  await find(page, 'v block');
  await found(page, /^V block .* open/).click();
  await until('Shop', place_is(page, 'Shop'));
  await until('the tools', () => control(page, 'heading', 'V blocks').isVisible());
  await find(page, 'bars');
  await page.keyboard.press('Enter');
  await until('Bars', place_is(page, 'Bars'));
  await find(page, 'millimetres');
  await found(page, /^Change inches and millimetres/).click();
  await until('mm', () => button(page, /^Units: mm/).isVisible());
});

test('what is nowhere is said, with a way on', {}, async (page) => {
  await start(page);
  await find(page, 'qqqzz');
  await until('so it is said', () => sheet(page).getByText(/^Nothing here is called/).isVisible());
  await button(page, 'Open the terms').click();
  await until('the terms', () => control(page, 'heading', 'Terms').isVisible());
});

for (const [width, height] of [[800, 1280], [390, 844]]) {
  test(`the search is done by touch alone at ${width} x ${height}`,
    { viewport: { width, height }, hasTouch: true, isMobile: true }, async (page) => {
      await start(page);
      await button(page, 'Find').tap();
      await until('the search', () => field(page).isVisible());
      await picture(page, `find-empty-${width}x${height}`);
      await button(page, 'Find tonnage').tap();
      await until('figures', () => found(page, /^Tonnage/).isVisible());
      await picture(page, `find-tonnage-${width}x${height}`);
      await found(page, /^Tonnage/).tap();
      await until('a working', () => page.getByText('Source: ').first().isVisible());
    });
}
