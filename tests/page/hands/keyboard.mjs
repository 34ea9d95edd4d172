// Keys alone: Tab and Shift+Tab to a control, then Enter, Space, arrows or letters. Where one is, is
// asked of the page (document.activeElement), as a screen reader would ask; no pointer ever moves.

import assert from 'node:assert/strict';

import { until } from '../harness.mjs';
import { find } from '../words.mjs';

const k_most_looks = 40;

/** What has the keyboard, and how many stops before or after it the wanted element stands. */
function look(element) {
  return element.evaluate((wanted) => {
    const at = document.activeElement;
    const stops = [...document.querySelectorAll('button, input, select, iframe, [tabindex]')].filter(
      (one) => one.tabIndex >= 0 && !one.disabled && !one.closest('[inert], [hidden]'),
    );
    const here = stops.indexOf(at);
    const name = at.getAttribute('aria-label') ?? at.textContent ?? '';
    return {
      there: at === wanted,
      among_tabs: at.getAttribute('role') === 'tab' && wanted.tabIndex < 0 &&
        wanted.parentElement === at.parentElement,
      where: `${at.getAttribute('role') ?? at.tagName} ${name.slice(0, 40)}`,
      stops: stops.indexOf(wanted) - here,
      before: Boolean(at.compareDocumentPosition(wanted) & Node.DOCUMENT_POSITION_PRECEDING),
    };
  });
}

export async function keyboard(page) {
  const go_to = async (thing) => {
    const element = find(page, thing);
    await until(`${thing.role} ${thing.name}`, () => element.count());
    const way = [];
    for (let looks = 0; looks < k_most_looks; ++looks) {
      const at = await look(element);
      if (at.there) return;
      way.push(at.where);
      // Among tabs the arrows go, because only one of them is a stop.
      const key = at.among_tabs ? `Arrow${at.before ? 'Left' : 'Right'}` : at.before ? 'Shift+Tab' : 'Tab';
      const times = at.among_tabs ? 1 : Math.max(1, Math.min(Math.abs(at.stops), 60));
      for (let i = 0; i < times; ++i) await page.keyboard.press(key);
    }
    assert.fail(`no key leads to ${thing.role} ${thing.name}: ${way.slice(-12).join(' | ')}`);
  };
  let with_space = false;
  return {
    async press(thing) {
      await go_to(thing);
      with_space = !with_space; // both keys must do
      await page.keyboard.press(with_space ? 'Space' : 'Enter');
    },
    async type(thing, text) {
      await go_to(thing);
      await page.keyboard.press('Control+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
  };
}
