// At the machine: steps by touch, a page that goes down in the middle, and both hands.

import assert from 'node:assert/strict';

import { control, open, picture, ready, test, until } from '../harness.mjs';
import { accept_notice, go, place } from '../words.mjs';

const tablet = (width, height) => ({ viewport: { width, height }, hasTouch: true, isMobile: true });
const key = (page, name) => control(page, 'button', name);
const next = (page) => key(page, /^(Next step|Done: to the end)$/);
const plus = (page) => key(page, /^(Tick: |One piece more)/);
const step = (page, number) => page.getByText(new RegExp(`^step ${number} of \\d+$`)).first();
const count = (page) => page.getByText(/^\d+ of \d+ (ticked|punched|cut|notched|bent|shaped)$/).first();
const k_back_within_ms = 2000;

async function to_the_machine(page) {
  await open(page);
  await accept_notice(page, (button) => button.tap());
  await go(page, 'Order', 'tap');
  await key(page, /^To the machine/).tap();
  await until('the first step', () => step(page, 1).isVisible());
}

const is_off = async (button) => (await button.getAttribute('aria-disabled')) === 'true' || button.isDisabled();

/** Taps until nothing of the step is left. Says how often. */
async function work_off(page, tick = () => plus(page).tap()) {
  let taps = 0;
  while (!(await is_off(plus(page)))) {
    const before = await count(page).textContent();
    await tick(taps);
    await until('one more', async () => (await count(page).textContent()) !== before ||
      (await is_off(plus(page))));
    taps += 1;
    assert.ok(taps < 400, 'the step has no end');
  }
  return taps;
}

test('three steps by touch, the page goes down, and comes back where it was', tablet(800, 1280), async (page, context) => {
  await to_the_machine(page);
  await picture(page, 'machine-set-up-800x1280');
  for (const number of [1, 2, 3]) {
    await until(`step ${number}`, () => step(page, number).isVisible());
    assert.ok((await work_off(page)) > 0, 'nothing could be tapped');
    await picture(page, `machine-${number}-800x1280`);
    await next(page).tap();
  }
  await until('step 4', () => step(page, 4).isVisible());
  await plus(page).tap();
  await until('one tick', async () => (await count(page).textContent()).startsWith('1 of '));
  const said = await count(page).textContent();
  await page.close({ runBeforeUnload: false });

  const again = await context.newPage();
  await again.goto(page.origin + '/');
  await ready(again);
  const start = Date.now(); // how long a start takes is another test's
  const line = again.getByText(/^You were at step 4: 1 of \d+ /).first();
  await until('the line that says so', () => line.isVisible(), k_back_within_ms);
  const took = Date.now() - start;
  assert.ok(took <= k_back_within_ms, `back after ${took} ms`);
  assert.match(await line.textContent(), /Last tap .*\d/);
  await picture(again, 'machine-back-800x1280');
  await key(again, 'Go on').tap();
  await until('the same step', () => step(again, 4).isVisible());
  assert.equal(await count(again).textContent(), said);
  await key(again, /^Take back: |^One piece less|^Take the last/).tap();
  await until('taken back', async () => (await count(again).textContent()).startsWith('0 of '));
});

for (const [width, height] of [[800, 1280], [1024, 768], [390, 844], [320, 568]])
  test(`keys change sides with the hand at ${width}x${height}, and stay inside`, tablet(width, height), async (page) => {
    await to_the_machine(page);
    const boxes = async () => {
      const list = [];
      for (const name of [/^Back one step/, /^Take |^One piece less/, /^Tick: |^One piece more/, /^Next step/])
        list.push(await key(page, name).boundingBox());
      return list;
    };
    const right = await boxes();
    for (const box of right) {
      assert.ok(box.x >= 0 && box.x + box.width <= width && box.y + box.height <= height, JSON.stringify(box));
      assert.ok(box.height >= 80, 'low');
    }
    assert.ok(right[3].x > right[0].x && right[2].x > right[1].x);
    for (const number of [2, 3, 4]) {
      await next(page).tap();
      await until(`step ${number}`, () => step(page, number).isVisible());
    }
    assert.deepEqual(await boxes(), right, 'a key moved');
    await picture(page, `machine-piece-${width}x${height}`);
    await key(page, 'Hold the work here').tap();
    await until('held', () => page.getByText(/^On hold since /).first().isVisible());
    await picture(page, `machine-hold-${width}x${height}`);
    await control(page, 'checkbox', 'Keys for the left hand').tap();
    await key(page, 'Go on').tap();
    await until('on', () => step(page, 4).isVisible());
    const left = await boxes();
    assert.ok(left[3].x < left[0].x && left[2].x < left[1].x);
    await picture(page, `machine-left-${width}x${height}`);
  });

test('the order says how far each set-up has come', {}, async (page) => {
  await open(page);
  await accept_notice(page);
  await go(page, 'Order');
  await key(page, /^To the machine/).click();
  await until('the first step', () => step(page, 1).isVisible());
  await work_off(page, (i) => page.keyboard.press(i % 2 === 0 ? ' ' : 'Enter'));
  await page.keyboard.press('ArrowRight');
  await until('next', () => step(page, 2).isVisible());
  await page.keyboard.press('Escape');
  await until('held', () => page.getByText(/^On hold since /).first().isVisible());
  await key(page, 'Leave the machine').click();
  await until('the order', () => control(page, 'heading', /^Set-up 1, 1 of \d+ steps done/).isVisible());
  await picture(page, 'machine-order');
});
