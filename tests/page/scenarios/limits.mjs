// What the machine can do: the limits of a station as a picture and as figures, and which machine
// does the whole job.

import assert from 'node:assert/strict';

import { control, open, picture, said, test, until } from '../harness.mjs';
import { accept_notice, go, undo } from '../words.mjs';

const finger = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };

async function open_limits(page) {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  await go(page, 'Limits', 'tap');
  await until('the view', () => control(page, 'heading', 'What it can do').isVisible());
}

/** What is said of one hole: "hole diameter 1: up to 3/4, with a certificate up to 1". */
async function figure(page, hole) {
  const line = new RegExp(`${hole}: (up to|nothing fits)[^"\n]*`);
  return (await until(`a figure for ${hole}`, async () => (await said(page)).match(line)))[0];
}

async function choose(page, name, option) {
  await control(page, 'combobox', name).selectOption({ label: option });
}

test('a stronger grade lowers what a station takes', finger, async (page) => {
  await open_limits(page);
  await choose(page, 'Station or attachment', 'Punch');
  await choose(page, 'Grade', 'A36');
  const mild = await figure(page, 'diameter 1');
  await picture(page, 'limits');
  await choose(page, 'Grade', '304 stainless');
  await until('another figure', async () => (await figure(page, 'diameter 1')) !== mild);
});

test('a tap on a point opens that operation of that part', finger, async (page) => {
  await open_limits(page);
  const point = control(page, 'button', /^HB3, Punch .*: fits only with a certificate/);
  await point.tap();
  await until('the part', () => control(page, 'heading', 'HB3').isVisible());
  await until('its operation', () => control(page, 'heading', 'What would make it fit').isVisible());
});

test('what is not known is named, and a tap leads to its field', finger, async (page) => {
  await open_limits(page);
  await go(page, 'Shop', 'tap');
  await control(page, 'button', /^Punch, Station/).tap();
  const force = control(page, 'textbox', 'Force');
  await force.tap();
  await force.fill('');
  await force.press('Enter');
  await go(page, 'Limits', 'tap');
  await until('the sentence', async () => /Nothing can be said\. Not known: force of Punch\. Enter it under Shop, Punch/.test(await said(page)));
  assert.equal(await page.getByRole('button', { name: /^HB\d+, Punch/ }).count(), 0);
  await control(page, 'button', 'Fill in under Shop').tap();
  await until('the form', () => force.isVisible());
});

test('another machine is described, used and given back', finger, async (page) => {
  await open_limits(page);
  await control(page, 'tab', 'Which machine').tap();
  await control(page, 'button', 'Describe another machine').tap();
  const use = control(page, 'button', 'Use Another machine');
  await until('it is in the list', () => use.isVisible());
  await picture(page, 'machines');
  await use.tap();
  await until('it is in use', () => control(page, 'button', 'Change Another machine').isVisible());
  await undo(page).tap();
  await until('it is in the list again', () => use.isVisible());
  await control(page, 'button', 'Remove Another machine').tap();
  await until('it is gone', async () => (await page.getByRole('button', { name: 'Use Another machine' }).count()) === 0);
});
