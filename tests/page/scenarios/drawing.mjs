// Looking at a drawing closely, choosing operations on it and putting them in their places: by
// touch, mouse, keyboard, and by role and name.

import assert from 'node:assert/strict';

import { control, open, picture, test, until } from '../harness.mjs';
import { settled } from '../walk.mjs';
import { accept_notice, part_row, undo } from '../words.mjs';

const finger = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };
const tall = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };
const k_angle = 'HC1'; // 3 x 3 angle, holes in both legs on their gauge lines
const drawing = (page, mark = k_angle) => control(page, 'img', new RegExp(`^Flat view of ${mark}`));
const zoom_in = (page) => control(page, 'button', 'Zoom in, flat blank');
const zoom_out = (page) => control(page, 'button', 'Zoom out, flat blank');
const whole = (page) => control(page, 'button', 'Whole drawing, flat blank');
const on_drawing = (page, number) =>
  control(page, 'button', new RegExp(`Operation ${number} on the drawing`));
const handle = (page) => control(page, 'button', /^Move operation/);
const middle = (box) => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });

async function open_part(page, mark = k_angle, press = (one) => one.tap()) {
  await open(page);
  await accept_notice(page, press);
  await press(part_row(page, mark));
  await until('the drawing', () => drawing(page, mark).isVisible());
}

/** Real touches, several at once; each step is a list of points. */
async function touches(page, context, steps) {
  const client = await context.newCDPSession(page);
  const send = (type, points) =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(([x, y], id) => ({ x, y, id })),
    });
  await send('touchStart', steps[0].slice(0, 1));
  if (steps[0].length > 1) await send('touchStart', steps[0]);
  for (const points of steps.slice(1)) {
    await send('touchMove', points);
    await page.waitForTimeout(20);
  }
  return {
    let_go: async () => {
      await page.waitForTimeout(150);
      await send('touchEnd', []);
      await client.detach();
    },
    move: (points) => send('touchMove', points),
    add: (points) => send('touchStart', points),
  };
}

async function pinch(page, context, at, from, to) {
  const steps = [];
  for (let i = 0; i <= 10; i += 1) {
    const half = (from + ((to - from) * i) / 10) / 2;
    steps.push([
      [at.x - half, at.y],
      [at.x + half, at.y],
    ]);
  }
  await (await touches(page, context, steps)).let_go();
}

async function drag(page, context, from, to, steps = 12) {
  const way = [];
  for (let i = 0; i <= steps; i += 1)
    way.push([[from.x + ((to.x - from.x) * i) / steps, from.y + ((to.y - from.y) * i) / steps]]);
  return touches(page, context, way);
}

test('two fingers zoom a drawing, a key shows all of it again', finger, async (page, context) => {
  await open_part(page);
  assert.equal(await whole(page).getAttribute('aria-disabled'), 'true');
  const before = await on_drawing(page, 2).boundingBox();
  const at = middle(before);
  await pinch(page, context, at, 80, 240);
  await until('it is zoomed', async () => (await whole(page).getAttribute('aria-disabled')) === null);
  await picture(page, 'drawing-zoomed');
  const after = middle(await on_drawing(page, 2).boundingBox());
  assert.ok(Math.hypot(after.x - at.x, after.y - at.y) < 110, 'what was pinched went away');
  await whole(page).tap();
  await until('whole', async () => (await whole(page).getAttribute('aria-disabled')) === 'true');
  assert.deepEqual(await on_drawing(page, 2).boundingBox(), before);
});

test('keys zoom without a second finger, and another part is seen whole', finger, async (page) => {
  await open_part(page);
  await zoom_in(page).tap();
  await zoom_in(page).tap();
  await until('zoomed', async () => (await zoom_out(page).getAttribute('aria-disabled')) === null);
  for (const key of [zoom_in(page), zoom_out(page), whole(page)])
    assert.ok((await key.boundingBox()).height >= 56, 'a key is too small for a glove');
  await part_row(page, 'HB2').tap();
  await until('whole', async () => (await zoom_out(page).getAttribute('aria-disabled')) === 'true');
});

test('at whole a drag over the drawing scrolls the page; zoomed it moves the drawing', finger, async (page, context) => {
  await open_part(page);
  const box = await drawing(page).boundingBox();
  const at = middle(box);
  await (await drag(page, context, at, { x: at.x, y: at.y - 120 })).let_go();
  await until('the page scrolled', async () => (await drawing(page).boundingBox()).y < box.y - 60);
  const back = middle(await drawing(page).boundingBox());
  await (await drag(page, context, back, { x: back.x, y: back.y + 200 })).let_go();
  await until('and back', async () => Math.abs((await drawing(page).boundingBox()).y - box.y) < 2);
  await zoom_in(page).tap();
  await zoom_in(page).tap();
  await zoom_in(page).tap();
  await (await drag(page, context, at, { x: at.x - 80, y: at.y - 60 })).let_go();
  assert.equal((await drawing(page).boundingBox()).y, box.y, 'a zoomed drawing scrolled the page');
});

test('an operation that is tapped on the drawing is chosen in the list and brought into sight', finger, async (page) => {
  await open_part(page, 'HB1');
  const row = control(page, 'button', /^Operation 3: /);
  await on_drawing(page, 3).tap();
  await until('it is chosen', async () => (await on_drawing(page, 3).getAttribute('aria-pressed')) === 'true');
  await until('the row is in sight', async () => {
    const box = await row.boundingBox();
    return box && box.y >= 0 && box.y + box.height <= 768;
  });
  await until('its checks', () => control(page, 'button', 'Show working, operation 3').isVisible());
  await picture(page, 'drawing-chosen');
  // Chosen in the list, it is marked on the drawing.
  await control(page, 'button', /^Operation 1: /).tap();
  await until('the other one', async () => (await on_drawing(page, 1).getAttribute('aria-pressed')) === 'true');
});

test('each operation on the drawing is a button with its place in its name, large and apart', finger, async (page) => {
  await open_part(page);
  const buttons = page.getByRole('button', { name: /on the drawing:/ });
  const boxes = [];
  for (const one of await buttons.all()) boxes.push(await one.boundingBox());
  assert.ok(boxes.length >= 2);
  for (const box of boxes) assert.ok(box.width >= 44 && box.height >= 44);
  for (const a of boxes)
    for (const b of boxes)
      if (a !== b)
        assert.ok(
          a.x + a.width <= b.x + 1 || b.x + b.width <= a.x + 1 || a.y + a.height <= b.y + 1 || b.y + b.height <= a.y + 1,
          'two of them overlap',
        );
  assert.match(await on_drawing(page, 2).textContent(), /Punch 11\/16 round at 1-1\/2, 1-3\/4/);
});

async function start_placing(page, number, press = (one) => one.tap()) {
  await press(on_drawing(page, number));
  await until('it is chosen', async () => (await on_drawing(page, number).getAttribute('aria-pressed')) === 'true');
  const key = control(page, 'button', /^Place by touch/);
  await until('it can be moved', async () => (await key.getAttribute('aria-disabled')) === null);
  await key.scrollIntoViewIfNeeded();
  await press(key);
  await until('the handle', () => handle(page).isVisible());
  await handle(page).scrollIntoViewIfNeeded();
}

for (const [name, options] of [
  ['1024 x 768', finger],
  ['800 x 1280', tall],
])
  test(`a hole is dragged off its gauge line and back, two edits in all, ${name}`, options, async (page, context) => {
    await open_part(page);
    await start_placing(page, 2);
    await handle(page).scrollIntoViewIfNeeded();
    const figure = async () => (await handle(page).textContent()).match(/now at (.*):/)[1];
    assert.equal(await figure(), '1-1/2, 1-3/4');
    let from = middle(await handle(page).boundingBox());
    const way = await drag(page, context, from, { x: from.x + 30, y: from.y - 25 });
    await until('it moves', async () => (await figure()) !== '1-1/2, 1-3/4');
    await picture(page, `drawing-drag-${name.replace(/ /g, '')}`);
    assert.equal(await undo(page).getAttribute('aria-disabled'), 'true', 'edited before it was let go');
    await way.let_go();
    await until('one edit', async () => (await undo(page).getAttribute('aria-disabled')) === null);
    const moved = await figure();
    assert.notEqual(moved, '1-1/2, 1-3/4');
    // The list of what it can catch on does the same without a drag.
    await control(page, 'button', /^Snap across to gauge line 1-3\/4/).tap();
    await until('on the line', async () => (await figure()).endsWith(', 1-3/4'));
    await undo(page).tap();
    await until('back to the drag', async () => (await figure()) === moved);
    await undo(page).tap();
    await until('as at first', async () => (await figure()) === '1-1/2, 1-3/4');
    assert.equal(await undo(page).getAttribute('aria-disabled'), 'true');
  });

test('a second finger puts a hole that is on its way back', finger, async (page, context) => {
  await open_part(page);
  await start_placing(page, 2);
  const from = middle(await handle(page).boundingBox());
  const way = await drag(page, context, from, { x: from.x + 40, y: from.y });
  await until('it moves', async () => !/now at 1-1\/2, /.test(await handle(page).textContent()));
  await way.add([
    [from.x + 40, from.y],
    [from.x + 160, from.y + 60],
  ]);
  await until('it is back', async () => /now at 1-1\/2, 1-3\/4/.test(await handle(page).textContent()));
  await way.let_go();
  assert.equal(await undo(page).getAttribute('aria-disabled'), 'true');
});

test('the keyboard zooms, chooses, nudges and takes', {}, async (page) => {
  await open_part(page, k_angle, (one) => one.click());
  const press = async (one) => {
    await one.focus();
    await page.keyboard.press('Enter');
  };
  await page.keyboard.press('Tab'); // from here on the keyboard is at work
  await zoom_in(page).focus();
  await settled(page); // no hand is quicker than a frame
  await page.keyboard.press('+');
  await until('zoomed', async () => (await whole(page).getAttribute('aria-disabled')) === null);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('0');
  await until('whole', async () => (await whole(page).getAttribute('aria-disabled')) === 'true');
  await start_placing(page, 2, press);
  await handle(page).focus();
  const at = (figure) => until(`at ${figure}`, async () => (await handle(page).textContent()).includes(`now at ${figure}:`));
  await page.keyboard.press('ArrowRight');
  await at('1-9/16, 1-3/4');
  await page.keyboard.press('Escape');
  await at('1-1/2, 1-3/4');
  await page.keyboard.press('ArrowUp');
  await at('1-1/2, 1-13/16');
  await page.keyboard.press('Shift+ArrowDown');
  await at('1-1/2, 1-3/4');
  await page.keyboard.press('ArrowLeft');
  await at('1-7/16, 1-3/4');
  await page.keyboard.press('Enter');
  await until('taken', async () => (await undo(page).getAttribute('aria-disabled')) === null);
  await page.keyboard.press('Control+z');
  await at('1-1/2, 1-3/4');
});

test('Ctrl and the wheel zoom at the pointer; the plain wheel does once it is zoomed', {}, async (page) => {
  await open_part(page, k_angle, (one) => one.click());
  const box = await drawing(page).boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -100);
  await page.keyboard.up('Control');
  await until('zoomed', async () => (await whole(page).getAttribute('aria-disabled')) === null);
  for (let i = 0; i < 4; i += 1) await page.mouse.wheel(0, 100);
  await until('whole', async () => (await whole(page).getAttribute('aria-disabled')) === 'true');
});
