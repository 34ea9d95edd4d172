// Trial strips: what they give, which blanks move, and how far the legs may come out.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, go, part_row, undo } from '../words.mjs';

const heading = (page, name) => control(page, 'heading', name);
const words = (page, text) => page.getByText(text).first();
const field = (page, name) => control(page, 'textbox', name);

async function type(box, text) {
  await box.click();
  await box.fill(text);
  await box.press('Enter');
}

async function open_trials(page) {
  await open(page);
  await accept_notice(page);
  await go(page, 'Shop');
  await control(page, 'button', /^Trial strips, /).click();
}

test('another measured leg moves the blanks, and undo puts them back', {}, async (page) => {
  await open_trials(page);
  const figures = words(page, /^K 0\.\d+, deduction/);
  const blank = words(page, /: blank .* by /);
  const before = await until('the figures', () => figures.textContent());
  const length = await until('a blank that goes by them', () => blank.textContent());
  await picture(page, 'trials');
  for (const name of ['One leg', 'Other leg']) await type(field(page, name), '4.28');
  await until('another K', async () => (await figures.textContent()) !== before);
  assert.notEqual(await blank.textContent(), length);
  await undo(page).click();
  await undo(page).click();
  await until('as before', async () => (await figures.textContent()) === before);
  assert.equal(await blank.textContent(), length);
});

test('legs that cannot be are refused at their field, and a trial can be added and removed', {}, async (page) => {
  await open_trials(page);
  const leg = field(page, 'One leg');
  await type(leg, '9');
  await until('refused', async () => (await leg.getAttribute('aria-invalid')) === 'true');
  const rows = page.getByRole('button', { name: / over V / }).and(page.locator('[aria-pressed]'));
  const count = await rows.count();
  await control(page, 'button', 'Add a trial').click();
  await until('one more', async () => (await rows.count()) === count + 1);
  await control(page, 'button', /^Remove the trial /).click();
  await until('as many as before', async () => (await rows.count()) === count);
});

test('a bent part says how far its legs may come out, by the class asked for', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await part_row(page, 'HK2').click();
  await until('legs', () => heading(page, 'Finished legs').count());
  assert.match(await words(page, /^limit/).textContent(), /^limit ± /);
  await go(page, 'Sheets');
  await control(page, 'combobox', /^Legs after ISO 2768-1/).selectOption('None asked for');
  await go(page, 'Parts');
  await until('no class', async () => (await words(page, 'no class asked for').count()) === 1);
  assert.equal(await page.getByText(/^limit/).count(), 0);
});
