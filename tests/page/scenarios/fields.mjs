// What is typed wrong stays in its field with the reason, and the job stays as it is.

import assert from 'node:assert/strict';

import { control, open, test, until } from '../harness.mjs';
import { accept_notice, go, undo, verdict_words } from '../words.mjs';

const field = (page, name) => control(page, 'textbox', name);

async function type(box, text) {
  await box.click();
  await box.fill(text);
  await box.press('Enter');
}

async function open_sizes(page) {
  await open(page);
  await accept_notice(page);
  await control(page, 'button', /^Change sizes/).click();
}

test('a text that is no length stays, with its reason, and changes nothing', {}, async (page) => {
  await open_sizes(page);
  const before = await verdict_words(page);
  const thickness = field(page, 'Thickness');
  for (const text of ['half an inch', '3/8 in in', '', '-1/4 in', '5-3', '1e99 in']) {
    await type(thickness, text);
    await until(`"${text}" is refused`, async () => (await thickness.getAttribute('aria-invalid')) === 'true');
    assert.equal(await thickness.inputValue(), text);
    assert.ok((await thickness.getAttribute('aria-description')).length > 10, 'no reason is given');
    assert.equal(await verdict_words(page), before);
    assert.equal(await undo(page).isDisabled(), true, 'something was changed');
  }
  await type(thickness, '1/2');
  await until('the mended text is taken', async () => /1\/2/.test(await verdict_words(page)));
  assert.equal(await thickness.getAttribute('aria-invalid'), null);
});

test('a turned verdict is said as a sentence', {}, async (page) => {
  await open_sizes(page);
  await type(field(page, 'Thickness'), '2 in');
  await until('the sentence', async () =>
    /^HB1: does not fit.*\.$/.test((await page.getByRole('status').textContent()).trim()),
  );
});

test('inch and metric show the same part', {}, async (page) => {
  await open_sizes(page);
  await control(page, 'button', /^Units: inch/).click();
  await until('millimetres', async () => /9\.5/.test(await verdict_words(page)));
  await type(field(page, 'Thickness'), '12');
  await until('a bare number is in mm', async () => /Plate 12 /.test(await verdict_words(page)));
});

test('a rating that is not known is named, and can be filled in', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await go(page, 'Shop');
  await control(page, 'button', /^Punch, Station/).click();
  const force = field(page, 'Force');
  const known = await until('the force', () => force.inputValue());
  await type(force, '');
  await go(page, 'Parts');
  await until('nothing can be said', async () => /cannot be said/.test(await verdict_words(page)));
  await control(page, 'button', /^Operation 3:/).click();
  await control(page, 'button', /^Fill in under Shop/).click();
  await type(field(page, 'Force'), known);
  await go(page, 'Parts');
  await until('it fits again', async () => /: fits/.test(await verdict_words(page)));
});
