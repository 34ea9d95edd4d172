// Layouts that make parts: filled in, added, followed, detached and taken out again, by finger on an
// upright tablet and by keyboard, every control by its role and its name.

import assert from 'node:assert/strict';

import { control, open, picture, said, test, until } from '../harness.mjs';
import { accept_notice, undo } from '../words.mjs';

const tablet = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };
const desktop = { viewport: { width: 1280, height: 900 } };

const lay_out = (page) => control(page, 'button', /^Lay out parts/);
const kind = (page) => control(page, 'combobox', 'What to make');
const add = (page) => control(page, 'button', 'Add to the job');

async function start(page, press) {
  await open(page);
  await accept_notice(page, press);
  await press(lay_out(page));
  await until('the layout', () => control(page, 'heading', 'A new layout').isVisible());
}

async function type(page, name, text, press) {
  const field = control(page, 'textbox', name, true);
  await press(field);
  await field.fill(text);
  await field.press('Enter');
}

test('a railing is laid out by touch, follows its run, and one undo takes it back', tablet, async (page) => {
  const press = (thing) => thing.tap();
  await start(page, press);
  assert.match(await said(page), /Level guard, 2 panels/);
  await type(page, 'Run', '24 ft', press);
  await until('another panel', async () => /Level guard, 3 panels/.test(await said(page)));
  await picture(page, 'layout-guard');
  await press(add(page));
  await until('its parts', async () => /Made by Guard or railing, level L1/.test(await said(page)));
  await press(control(page, 'button', 'Open its layout'));
  await type(page, 'Run', '32 ft', press);
  await press(control(page, 'button', 'Make its parts follow'));
  await until('five posts', async () => /L1-P . 5/.test(await said(page)));
  await press(control(page, 'button', 'Back to the parts'));
  await press(undo(page));
  await press(undo(page));
  await until('no part of it', async () => !/L1-P/.test(await said(page)));
});

test('a rule that is broken is said with its source, and does not stand in the way', tablet, async (page) => {
  const press = (thing) => thing.tap();
  await start(page, press);
  await type(page, 'Height', '30 in', press);
  await until('the rule', async () =>
    /Height of the top edge: 30 in, at least 36 in: breaks IRC, guard of a dwelling/.test(await said(page)));
  await picture(page, 'layout-rule');
  assert.equal(await add(page).isEnabled(), true);
});

test('a stair with a landing, pickets by the tread, says what breaks and where to mark', tablet, async (page) => {
  const press = (thing) => thing.tap();
  await start(page, press);
  await kind(page).selectOption({ label: 'Guard or railing, up a stair' });
  await press(control(page, 'checkbox', 'More inputs'));
  await until('the other inputs', () => control(page, 'textbox', 'Upper landing', true).count());
  await type(page, 'Upper landing', '76 in', press);
  await type(page, 'Landing height', '42 in', press);
  await type(page, 'Per tread', '2', press);
  // Two pickets of 3/4 in on a tread of 11 in: 4-3/4 in, over the 4-3/8 in of a dwelling's stair.
  await until('the rule', async () =>
    /4-3\/4 in, under 4-3\/8 in: breaks IRC, open side of a stair/.test(await said(page)));
  await type(page, 'Per tread', '3', press);
  await until('the rule again', async () => /under 4-3\/8 in: meets IRC, open side of a stair/.test(await said(page)));
  await until('where to mark', async () =>
    /Near faces of pickets, from the post's face along the rail, upper landing: 3-/.test(await said(page)));
  await picture(page, 'layout-stair');
  await press(add(page));
  await until('its parts', async () => /Made by Guard or railing, up a stair L1/.test(await said(page)));
});

test('every kind is reached by the keyboard and shows what it makes', desktop, async (page) => {
  const press = (thing) => thing.click();
  await start(page, press);
  const kinds = await kind(page).locator('option').allTextContents();
  assert.ok(kinds.length >= 15);
  for (const title of kinds) {
    await kind(page).selectOption({ label: title });
    const chosen = async () => kind(page).locator('option:checked').first().textContent();
    await until(title, async () => (await chosen()) === title);
    await until('its parts', () => control(page, 'heading', 'Parts that it makes').isVisible());
  }
  await kind(page).selectOption({ label: 'Ring' });
  await until('its drawing', async () => /img "Middle line of the bent bar/.test(await said(page)));
  await picture(page, 'layout-ring');
  await add(page).focus();
  await page.keyboard.press('Enter');
  await until('the part', async () => /Made by Ring L1: ring/.test(await said(page)));
  await control(page, 'button', 'Detach from its layout').focus();
  await page.keyboard.press('Enter');
  await until('detached', async () => /Made by Ring L1: ring, no longer linked/.test(await said(page)));
  assert.equal(await control(page, 'button', 'Detach from its layout').count(), 0);
});
