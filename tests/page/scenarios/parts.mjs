// Parts and operations come and go, and every step can be taken back.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, part_row, undo } from '../words.mjs';

const button = (page, name) => control(page, 'button', name);
const operations = (page) => page.getByRole('button', { name: /^Operation \d+:/ }).count();

test('an operation is added, changed and taken away', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const before = await operations(page);
  await button(page, 'Add an operation').click();
  await button(page, 'Add operation: Punch').click();
  await until('one more', async () => (await operations(page)) === before + 1);
  const size = control(page, 'textbox', 'Hole diameter');
  await size.click();
  await size.fill('11/16');
  await size.press('Enter');
  await until('its size', () => button(page, /^Operation \d+: Punch 11\/16 round/).isVisible());
  await button(page, /^Remove operation/).click();
  await until('one less', async () => (await operations(page)) === before);
  await undo(page).click();
  await until('it is back', async () => (await operations(page)) === before + 1);
});

test('a part is added, removed and brought back', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await button(page, 'Add a part').click();
  const mark = control(page, 'textbox', 'Mark');
  await until('its sizes are open', () => mark.isVisible());
  await mark.click();
  await mark.fill('NEW1');
  await mark.press('Enter');
  await until('its mark', async () => (await part_row(page, 'NEW1').count()) === 1);
  await button(page, 'Remove part NEW1').click();
  await until('it is gone', async () => (await part_row(page, 'NEW1').count()) === 0);
  await undo(page).click();
  await until('it is back', async () => (await part_row(page, 'NEW1').count()) === 1);
});

for (const [width, height] of [
  [1024, 768],
  [800, 1280],
  [1440, 900],
]) {
  test(`the working stands beside the part at ${width} x ${height}`, { viewport: { width, height } }, async (page) => {
    await open(page);
    await accept_notice(page);
    await button(page, /^Operation 3:/).click();
    await button(page, /^Show working/).click();
    const working = page.getByText('Source: ').first();
    await until('a source', () => working.isVisible());
    await picture(page, `working-${width}x${height}`);
    const drawing = await page.getByRole('img', { name: /^Flat view/ }).first().boundingBox();
    const words = await working.boundingBox();
    const apart = words.x >= drawing.x + drawing.width || words.y >= drawing.y + drawing.height;
    assert.ok(apart, `${JSON.stringify(words)} lies over ${JSON.stringify(drawing)}`);
  });
}
