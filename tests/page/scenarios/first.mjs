// The first minutes: what the page says before anything was done, and where there is nothing yet.

import assert from 'node:assert/strict';

import { control, open, picture, ready, test, until } from '../harness.mjs';
import { accept_notice, part_row } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);
const tab = (page, name) => page.getByRole('tab', { name }).first();
const hint = (page) => page.getByText(/^This is an invented job\./);

for (const [width, height] of [[1024, 768], [800, 1280], [390, 844], [320, 700]]) {
  test(`the first start says what to do next at ${width} x ${height}`,
    { viewport: { width, height } }, async (page) => {
      await open(page);
      await accept_notice(page);
      await until('the line', () => hint(page).isVisible());
      await picture(page, `first-${width}x${height}`);
      for (const name of ['Jobs', 'Parts', 'Order', 'Bars', 'Limits', 'Shop', 'Sheets', 'Help']) {
        await tab(page, name).click();
        await until(name, async () => (await tab(page, name).getAttribute('aria-selected')) === 'true');
        const box = await tab(page, name).boundingBox();
        assert.ok(box.x >= 0 && box.x + box.width <= width + 1, `${name}: ${JSON.stringify(box)}`);
      }
      const name = await page.getByRole('heading', { level: 1 }).first().boundingBox();
      assert.ok(name.width >= 150, `the job's name has ${name.width} px`);
    });
}

test('the line is dismissed for good, and Help has it again', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await until('the line', () => hint(page).isVisible());
  await button(page, /^Dismiss this line/).click();
  await until('it is gone', async () => (await hint(page).count()) === 0);
  await page.waitForTimeout(300);
  await page.reload();
  await ready(page);
  await until('the job', () => part_row(page).isVisible());
  assert.equal(await hint(page).count(), 0);
  await tab(page, 'Help').click();
  await button(page, 'Show the first line again').click();
  await until('it is back', () => hint(page).isVisible());
});

test('an empty job says the next action in every place, with a key for it', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await button(page, 'Start your own').click();
  await until('no parts', () => page.getByText(/^This job has no parts yet/).isVisible());
  await picture(page, 'first-empty-parts');
  for (const [place, words] of [['Order', /^The order of work is made/], ['Bars', /^Bars are cut for/]]) {
    await tab(page, place).click();
    await until(place, () => page.getByText(words).isVisible());
    await until('a key', () => button(page, 'Look at the demo job').isVisible());
  }
  await page.locator('[data-id$="next/Add a part"]').click();
  await until('a part', () => part_row(page, 'P1').isVisible());
  await until('its sizes', () => control(page, 'textbox', 'Mark').isVisible());
});

test('a tap on the job\'s name leads to the field of its name', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await button(page, /^Name, due date and note of/).click();
  const name = control(page, 'textbox', 'Name of the job');
  await until('the field', () => name.evaluate((one) => one === document.activeElement));
  await page.keyboard.type('Gate for the yard');
  await page.keyboard.press('Enter');
  await until('the name', () => control(page, 'heading', 'Gate for the yard').isVisible());
});
