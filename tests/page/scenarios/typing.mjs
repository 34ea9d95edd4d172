// Text as people type it, keys that get stuck elsewhere, and the room that a keyboard takes.

import assert from 'node:assert/strict';

import { control, open, test, until } from '../harness.mjs';
import { accept_notice, go, k_part, place, undo, verdict_words } from '../words.mjs';

async function open_sizes(page) {
  await open(page);
  await accept_notice(page);
  await control(page, 'button', new RegExp(`^Change sizes of ${k_part}`)).click();
}

const job_name = (page) => control(page, 'textbox', 'Note on the sheet');

test('accents, signs and a composed word arrive as text', {}, async (page, context) => {
  await open_sizes(page);
  const note = job_name(page);
  await note.click();
  await page.keyboard.insertText('é ñ @ ½ ');
  const wire = await context.newCDPSession(page);
  for (const part of ['k', 'か', 'かん', '漢'])
    await wire.send('Input.imeSetComposition', { text: part, selectionStart: part.length, selectionEnd: part.length });
  await wire.send('Input.insertText', { text: '漢字' });
  await page.keyboard.press('Enter');
  await until('undo', async () => (await undo(page).getAttribute('aria-disabled')) !== 'true');
  assert.equal(await note.inputValue(), 'é ñ @ ½ 漢字');
});

test('a modifier that was let go elsewhere is not held here', {}, async (page) => {
  await open_sizes(page);
  await control(page, 'textbox', 'Thickness').fill('1/2');
  await page.keyboard.press('Enter');
  await until('it is taken', async () => /1\/2/.test(await verdict_words(page)));
  await place(page, 'Parts').focus();
  await page.keyboard.down('Control');
  await page.evaluate(() => {
    window.dispatchEvent(new Event('blur'));
    // The key goes up in another window; the next one comes without it.
    document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key: 'z', bubbles: true }));
  });
  await page.waitForTimeout(300);
  assert.match(await verdict_words(page), /1\/2/, 'a bare z undid');
  await page.keyboard.up('Control');
});

test('Tab leaves the page after the last control, and shortcuts of the browser stay its own', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  const count = await page.locator('#mirror :is(button, input, select):not(:disabled)').count();
  let left = false;
  await page.evaluate(() => document.activeElement?.blur());
  for (let i = 0; i < count + 30 && !left; i += 1) {
    await page.keyboard.press('Tab');
    left = i > 3 && await page.evaluate(() => document.activeElement === document.body);
  }
  assert.ok(left, 'the focus never left');
  const taken = await page.evaluate(() => ['t', 'w', 'l', 'r'].filter((key) => {
    const event = new KeyboardEvent('keydown', { key, ctrlKey: true, bubbles: true, cancelable: true });
    document.body.dispatchEvent(event);
    return event.defaultPrevented;
  }));
  assert.deepEqual(taken, []);
});

for (const way of ['resizes the content', 'covers the page']) {
  const tablet = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };
  test(`a field of words stays in sight when a keyboard ${way}`, tablet, async (page) => {
    await open(page);
    await accept_notice(page, (button) => button.tap());
    await control(page, 'button', new RegExp(`^Change sizes of ${k_part}`)).tap();
    const note = job_name(page);
    await note.tap();
    if (way === 'covers the page') {
      await page.evaluate(() => {
        Object.defineProperty(window.visualViewport, 'height', { get: () => 520 });
        window.visualViewport.dispatchEvent(new Event('resize'));
      });
    } else {
      await page.setViewportSize({ width: 800, height: 520 });
    }
    await until('it is seen whole', async () => {
      const box = await note.boundingBox();
      return box && box.y >= 0 && box.y + box.height <= 520;
    });
  });
}

for (const deviceScaleFactor of [0.5, 1, 1.25, 1.5, 2, 3]) {
  test(`a press hits what is drawn at ratio ${deviceScaleFactor}`, { deviceScaleFactor }, async (page) => {
    await open(page);
    await accept_notice(page);
    const sheets = place(page, 'Sheets');
    const box = await sheets.boundingBox();
    // One pixel inside each corner hits; the canvas has a pixel for each of the screen's.
    for (const [x, y] of [[box.x + 1, box.y + 1], [box.x + box.width - 2, box.y + box.height - 2]]) {
      await page.mouse.click(x, y);
      await until('the place', async () => (await sheets.getAttribute('aria-selected')) === 'true');
      await go(page, 'Parts');
      await until('back', async () => (await sheets.getAttribute('aria-selected')) === 'false');
    }
    await page.mouse.click(box.x + 10, box.y + box.height + 3);
    await page.waitForTimeout(200);
    assert.equal(await sheets.getAttribute('aria-selected'), 'false', 'a press beside it hit');
    const pixels = await page.evaluate(() => {
      const canvas = document.getElementById('canvas');
      return [canvas.width / canvas.clientWidth, canvas.height / canvas.clientHeight];
    });
    for (const ratio of pixels) assert.ok(Math.abs(ratio - deviceScaleFactor) < 0.01, String(pixels));
  });
}

for (const deviceScaleFactor of [1.25, 1.5, 1.75]) {
  const odd = { viewport: { width: 1023, height: 767 }, deviceScaleFactor };
  test(`the picture reaches the last pixel at ratio ${deviceScaleFactor}`, odd, async (page) => {
    await open(page);
    await accept_notice(page);
    const shot = (await page.screenshot()).toString('base64');
    const edges = await page.evaluate(async (bytes) => {
      const image = new Image();
      image.src = `data:image/png;base64,${bytes}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.width;
      canvas.height = image.height;
      const context = canvas.getContext('2d');
      context.drawImage(image, 0, 0);
      const black = (data) => data.reduce((sum, value, i) => sum + (i % 4 < 3 ? value : 0), 0) === 0;
      // A row and a column that hold nothing were never drawn.
      return [1, 2].map((from) => black(context.getImageData(0, image.height - from, image.width, 1).data)
        || black(context.getImageData(image.width - from, 0, 1, image.height).data));
    }, shot);
    assert.deepEqual(edges, [false, false]);
  });
}
