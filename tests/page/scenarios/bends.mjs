// The bends of a part one by one: where it lies, what the stop is set to, and what it looks like.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, go, part_row } from '../words.mjs';

const finger = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };
const k_bent = 'HK4'; // a hat of four bends
const heading = (page, name) => control(page, 'heading', name);
const stage = (page) => control(page, 'img', /^Side view of HK4 after/);

async function open_bends(page) {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  await part_row(page, k_bent).tap();
  await control(page, 'tab', 'Bends').tap();
}

test('the stages of a bent part are gone through with two keys', finger, async (page) => {
  await open_bends(page);
  const previous = control(page, 'button', 'Previous bend');
  const next = control(page, 'button', 'Next bend');
  await until('the first stage', () => heading(page, 'Bend 1 of 4').isVisible());
  assert.equal(await previous.isDisabled(), true);
  const before = await next.boundingBox();
  for (const bend of [2, 3, 4]) {
    await next.tap();
    await until(`bend ${bend}`, () => heading(page, `Bend ${bend} of 4`).isVisible());
    assert.match(await stage(page).getAttribute('aria-label'), new RegExp(`after ${bend} of`));
    assert.ok(await page.getByText(/^Stop .* to (the|leg)/).first().isVisible(), 'no stop is said');
    assert.ok(await page.getByText(/datum face (up|down)/i).first().isVisible(), 'nor how it lies');
  }
  assert.equal(await next.isDisabled(), true);
  assert.deepEqual(await next.boundingBox(), before, 'the key moved under the finger');
  await picture(page, 'bend-stages');
  await previous.tap();
  await until('back', () => heading(page, 'Bend 3 of 4').isVisible());
});

test('a straight part has no stages', finger, async (page) => {
  await open_bends(page);
  await part_row(page, 'HB1').tap();
  await until('two shapes', async () => (await page.getByRole('tab', { name: 'Bends' }).count()) === 0);
});

test('without an order the page says what is in the way, or what is not known', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const open_height = async (text) => {
    await go(page, 'Shop');
    await control(page, 'button', /^Short brake, /).click();
    const box = control(page, 'textbox', 'Bed to ram, open');
    await box.click();
    await box.fill(text);
    await box.press('Enter');
    await go(page, 'Parts');
    await part_row(page, k_bent).click();
    await control(page, 'tab', 'Bends').click();
  };
  await open_height('6 in');
  const blocked = page.getByText(/^Operation \d+: No order of the bends works/).first();
  await until('the obstacle', () => blocked.isVisible());
  assert.match(await blocked.textContent(), /leg \d+ meets|punch and die|edge for the stop/);
  await open_height('');
  await until('what is missing', () => page.getByText(/stop settings not computed. Not known: /).first().isVisible());
  await control(page, 'button', /^Fill in under Shop/).click();
  await until('its field', () => control(page, 'textbox', 'Bed to ram, open').isVisible());
});
