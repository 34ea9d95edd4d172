// Figures by finger: the page's own number pad, what it says before it takes, and where it stands.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { accept_notice, undo, verdict_words } from '../words.mjs';

const upright = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };
const lying = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };

const field = (page, name) => page.getByRole('textbox', { name, exact: true }).first();
const pad = (page) => page.getByRole('group', { name: 'Number pad' });
const key = (page, name) => pad(page).getByRole('button', { name, exact: true });
const echo = (page) => page.locator('[data-id="entry/echo"]');
const has_keyboard = (box) => box.evaluate((element) => element === document.activeElement);

async function open_sizes(page) {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  const sizes = control(page, 'button', /^Change sizes/);
  if (!(await sizes.isVisible())) await control(page, 'button', /HB1/).tap();
  await sizes.tap();
  await until('the sizes', () => field(page, 'Thickness').isVisible());
}

async function press(page, names) {
  for (const name of names) await key(page, name).tap();
}

async function says(page, words) {
  await until(`the echo says ${words}`, async () => (await echo(page).textContent()) === words);
}

for (const size of [upright, lying]) {
  const { width, height } = size.viewport;
  test(`the pad takes a figure by finger at ${width} x ${height}`, size, async (page) => {
    await open_sizes(page);
    const thickness = field(page, 'Thickness');
    assert.equal(await thickness.getAttribute('inputmode'), 'none', 'the system keyboard is asked for');
    await thickness.tap();
    await until('the pad', () => pad(page).isVisible());
    await press(page, ['1', '/ fraction bar', '2']);
    await says(page, '1/2 in = 12.7 mm');
    assert.equal(await thickness.inputValue(), '1/2', 'the first key replaces what stood there');
    assert.ok(await has_keyboard(thickness), 'a key of the pad took the keyboard');
    assert.doesNotMatch(await verdict_words(page), /1\/2 ×/, 'typing alone changed the part');
    await picture(page, `pad-${width}x${height}`);
    await press(page, ['Back one sign', '4']);
    await says(page, '1/4 in = 6.35 mm');
    await press(page, ['One step more']);
    await says(page, '5/16 in = 7.938 mm');
    await press(page, ['Done']);
    await until('the pad goes', async () => !(await pad(page).isVisible()));
    await until('it is taken', async () => /5\/16/.test(await verdict_words(page)));
  });

  test(`the field is seen whole beside the pad at ${width} x ${height}`, size, async (page) => {
    await open_sizes(page);
    const all = page.locator('.m-number:not(:disabled)');
    await all.first().tap();
    await until('the pad', () => pad(page).isVisible());
    const count = await all.count();
    for (let at = 0; at < Math.min(count, 6); at += 1) {
      const id = await page.evaluate(() => document.activeElement.dataset.id);
      await until(`${id} is in sight`, async () => {
        const [box, over] = [await page.locator(':focus').boundingBox(), await pad(page).boundingBox()];
        const apart = box.x + box.width <= over.x || over.x + over.width <= box.x
          || box.y + box.height <= over.y || over.y + over.height <= box.y;
        return apart && box.y >= 0 && box.y + box.height <= height;
      });
      const before = await pad(page).boundingBox();
      await key(page, 'Next field').tap();
      await page.waitForTimeout(150);
      if (await pad(page).isVisible())
        assert.deepEqual(await pad(page).boundingBox(), before, 'the pad moved under the finger');
    }
  });
}

test('next takes the figure and goes to the next field', upright, async (page) => {
  await open_sizes(page);
  const thickness = field(page, 'Thickness');
  await thickness.tap();
  await until('the pad', () => pad(page).isVisible());
  await press(page, ['1', '/ fraction bar', '2', 'Next field']);
  await until('it is taken', async () => /1\/2/.test(await verdict_words(page)));
  assert.equal(await has_keyboard(thickness), false);
  assert.ok(await page.evaluate(() => document.activeElement.classList.contains('m-number')));
  assert.ok(await pad(page).isVisible());
});

test('5-3 is asked about and never guessed', upright, async (page) => {
  await open_sizes(page);
  const thickness = field(page, 'Thickness');
  const before = await verdict_words(page);
  await thickness.tap();
  await until('the pad', () => pad(page).isVisible());
  await press(page, ['5', '- dash', '3']);
  const fraction = pad(page).getByRole('button', { name: /^5 in and 3/ });
  await until('two meanings', () => fraction.isVisible());
  assert.ok(await pad(page).getByRole('button', { name: /^5'-3" = 1600.2 mm/ }).isVisible());
  await picture(page, 'pad-asks');
  await press(page, ['Done']);
  await until('it is refused', async () => (await thickness.getAttribute('aria-invalid')) === 'true');
  assert.equal(await thickness.inputValue(), '5-3', 'what was typed is gone');
  assert.equal(await verdict_words(page), before);
  assert.equal(await undo(page).getAttribute('aria-disabled'), 'true', 'something was changed');
  await thickness.tap();
  await fraction.tap();
  await until('the text for it', async () => (await thickness.inputValue()) === '5-3/');
  await press(page, ['1', '6']);
  await says(page, '5-3/16 in = 131.763 mm');
});

test('what cannot be read says so, stays, and Escape brings the old text back', upright, async (page) => {
  await open_sizes(page);
  const thickness = field(page, 'Thickness');
  const old = await thickness.inputValue();
  await thickness.tap();
  await until('the pad', () => pad(page).isVisible());
  await press(page, ['1', '/ fraction bar', '0']);
  await until('the reason', async () => /cannot be zero/.test(await echo(page).textContent()));
  await page.keyboard.press('Escape');
  await until('the old text', async () => (await thickness.inputValue()) === old);
  assert.equal(await thickness.getAttribute('aria-invalid'), null);
  await thickness.tap();
  await press(page, ['1', '/ fraction bar', '0', 'Next field']);
  await until('it is refused', async () => (await thickness.getAttribute('aria-invalid')) === 'true');
  assert.equal(await thickness.inputValue(), '1/0');
});

test('a keyboard needs no pad: echo beside the field, Enter goes on', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await control(page, 'button', /^Change sizes/).click();
  const thickness = field(page, 'Thickness');
  await thickness.click();
  assert.equal(await echo(page).count(), 0, 'an echo before anything was typed');
  await page.keyboard.type('1 3/8"');
  await says(page, '1-3/8 in = 34.925 mm');
  assert.equal(await pad(page).count(), 0);
  await picture(page, 'echo-beside');
  await page.keyboard.press('Enter');
  await until('it is taken', async () => /1-3\/8/.test(await verdict_words(page)));
  assert.equal(await has_keyboard(thickness), false);
  assert.ok(await page.evaluate(() => document.activeElement.classList.contains('m-number')));
});

test('a keyboard in the middle of the finger sends the pad away', upright, async (page) => {
  await open_sizes(page);
  await field(page, 'Thickness').tap();
  await until('the pad', () => pad(page).isVisible());
  await page.keyboard.type('7/8');
  await until('the pad goes', async () => (await pad(page).count()) === 0);
  await says(page, '7/8 in = 22.225 mm');
});

test('no frame is drawn while a figure stands half typed', upright, async (page) => {
  await open_sizes(page);
  await field(page, 'Thickness').tap();
  await until('the pad', () => pad(page).isVisible());
  await press(page, ['1']);
  await page.waitForTimeout(1500);
  const frames = () => page.evaluate(() => Number(document.getElementById('stage').dataset.frames));
  const before = await frames();
  await page.waitForTimeout(3000);
  assert.equal(await frames(), before);
});
