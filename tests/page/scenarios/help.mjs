// Help: its sections, and the ways to it.

import assert from 'node:assert/strict';

import { control, open, picture, said, test, until } from '../harness.mjs';
import { accept_notice } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);
const tab = (page, name) => page.getByRole('tab', { name }).first();

test('Help says how to, what words mean, which keys there are, and what can hurt', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await tab(page, 'Help').click();
  for (const [section, words] of [
    ['How to', /Start a job of your own/],
    ['Terms', /Outside setback/],
    ['Keys', /Ctrl \+ K/],
    ['What can hurt', /competent person/],
    ['About', /MIT licence/],
  ]) {
    await button(page, section).click();
    await until(section, async () => words.test(await said(page)));
    await picture(page, `help-${section.toLowerCase().replaceAll(' ', '-')}`);
  }
});

test('a task leads to the place where it is done', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await tab(page, 'Help').click();
  await button(page, /^Go to Sheets: Print/).click();
  await until('Sheets', async () => (await tab(page, 'Sheets').getAttribute('aria-selected')) === 'true');
});

test('a working leads to its term', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await button(page, /^Operation 3:/).click();
  await button(page, /^Show working/).click();
  await button(page, 'What is this: Stripper').click();
  const term = control(page, 'heading', 'Stripper');
  const box = await until('the term, in sight', async () => {
    const at = (await term.isVisible()) && (await term.boundingBox());
    return at && at.y > 0 && at.y < 700 && at;
  });
  assert.ok(box.height > 0);
});
