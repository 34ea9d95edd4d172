// A finger alone: what is out of sight is dragged into sight, then the middle of its box is tapped.

import assert from 'node:assert/strict';

import { until } from '../harness.mjs';
import { settled } from '../walk.mjs';
import { find, things } from '../words.mjs';

const k_most_drags = 60;

/** A finger through the browser's own door: down, moves, up, with no waiting in between. */
export async function finger(page) {
  const door = await page.context().newCDPSession(page);
  const send = (type, touchPoints) => door.send('Input.dispatchTouchEvent', { type, touchPoints });
  return {
    async tap(x, y) {
      await send('touchStart', [{ x, y }]);
      await send('touchEnd', []);
    },
    async drag(x, y, dx, dy, steps = 6, holds = true) {
      await send('touchStart', [{ x, y }]);
      for (let i = 1; i <= steps; ++i)
        await send('touchMove', [{ x: x + (dx * i) / steps, y: y + (dy * i) / steps }]);
      // Held still before it leaves, so that nothing glides on.
      for (let i = 0; holds && i < 3; ++i) {
        await page.waitForTimeout(40);
        await send('touchMove', [{ x: x + dx, y: y + dy + (i % 2) }]);
      }
      await send('touchEnd', []);
    },
  };
}

/** Box of a control and of the area that scrolls it, in the page's pixels. */
function boxes(element) {
  return element.evaluate((found) => {
    const plain = (rect) => ({ x: rect.x, y: rect.y, w: rect.width, h: rect.height });
    const area = found.parentElement?.closest('.m-scroll');
    return {
      box: plain(found.getBoundingClientRect()),
      area: area ? plain(area.getBoundingClientRect()) : null,
    };
  });
}

export async function touch(page) {
  const hand = await finger(page);
  const middle_of = async (thing) => {
    const element = find(page, thing);
    await until(`${thing.role} ${thing.name}`, () => element.count());
    for (let drags = 0; drags < k_most_drags; ++drags) {
      const { box, area } = await boxes(element);
      const y = box.y + box.h / 2;
      if (!area || (y > area.y + 8 && y < area.y + area.h - 8))
        return { x: box.x + box.w / 2, y };
      const want = y < area.y + 8 ? area.h * 0.6 : -area.h * 0.6;
      const over = y < area.y ? area.y + area.h / 2 - y : area.y + area.h / 2 - y;
      const by = Math.abs(over) < Math.abs(want) ? over : want;
      // Near the edge of the area, so that a drawing that takes drags itself is not in the way.
      await hand.drag(area.x + area.w - 14, area.y + area.h / 2 - by / 2, 0, by);
      await settled(page); // a tap on what still glides only stops it
    }
    assert.fail(`${thing.role} ${thing.name} cannot be dragged into sight`);
  };
  const press = async (thing) => {
    await settled(page); // a hand waits until nothing moves
    const at = await middle_of(thing);
    await hand.tap(at.x, at.y);
  };
  return {
    press,
    async type(thing, text) {
      await press(thing);
      const field = find(page, thing);
      await until('the field is open', () =>
        field.evaluate((element) => element === document.activeElement));
      // Figures come from the page's own keys; words from the device's keyboard, which types into
      // the field that has the focus.
      if ((await field.getAttribute('inputmode')) === 'none') {
        for (const sign of text) await press(things.pad_key(sign));
        await press(things.pad_done);
      } else {
        await page.keyboard.press('Control+a');
        await page.keyboard.type(text);
        await page.keyboard.press('Enter');
      }
    },
  };
}
