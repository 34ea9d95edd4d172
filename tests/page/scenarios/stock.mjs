// Bars of the job: proven beside the page, redone when the rack changes, and drawn where they lie.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { control, open, picture, site, site_file, test, until } from '../harness.mjs';
import { accept_notice, go, place, undo } from '../words.mjs';

const finger = { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true };
const k_bought = 'Flat 3/16 × 2-1/2, A36'; // six pieces of 18 from a bar that has to be bought
const tap = (button) => button.tap();

async function open_bars(page, press) {
  await open(page);
  await accept_notice(page, press);
  await press(place(page, 'Bars'));
}

/** What is said of one section: all words from its heading to the next. */
async function words_of(page, title) {
  const all = await page.getByRole('group', { name: 'Bars', exact: true }).ariaSnapshot();
  const from = all.indexOf(`heading "${title}"`);
  if (from < 0) return '';
  const next = all.indexOf('- heading "', from);
  return all.slice(from, next < 0 ? undefined : next);
}
const said_of = (page, title, words) =>
  until(`${title}: ${words}`, async () => words.test(await words_of(page, title)));

// One section of the demo has no bar in the rack and none to buy.
const all_proven = (page) => until('all bars are proven', async () =>
  /^13 sections: .* bars, proven; 1 of 13 without a plan$/.test(await page.getByText(/^\d+ sections: /).first().textContent()));

test('bars of the demo job are proven, drawn and listed by a tap, and then nothing moves', finger, async (page) => {
  await open_bars(page, tap);
  await all_proven(page);
  await said_of(page, 'Round 3/4, A36', /no plan costs less/);
  await said_of(page, 'Angle 3 × 3 × 1/4, A36', /1 bar; no plan needs fewer/);
  await said_of(page, k_bought, /Buy 1 of 240 at 26\.00/);
  await picture(page, 'bars');
  const bar = control(page, 'button', /^Bar 144: HP2 36-1\/4, stop 36-3\/4; /);
  const cut = control(page, 'button', /^Cut 4: HP1 34-1\/2, stop 142/);
  assert.equal(await cut.count(), 0);
  await bar.tap();
  await until('its cuts', () => cut.count());
  await cut.scrollIntoViewIfNeeded();
  await picture(page, 'bars-open');
  const frames = () => page.locator('#stage').getAttribute('data-frames');
  await new Promise((resolve) => setTimeout(resolve, 1500));
  const drawn = await frames();
  await new Promise((resolve) => setTimeout(resolve, 3000));
  assert.equal(await frames(), drawn, 'nothing is drawn unasked');
  assert.deepEqual(page.foreign, []);
  assert.deepEqual(await page.evaluate(() => window.csp_violations), []);
  await cut.tap();
  await until('its part', () => control(page, 'heading', /HP1/).count());
});

test('a drop in the rack leaves less to buy, and undo buys again', {}, async (page) => {
  await open_bars(page, (button) => button.click());
  await said_of(page, k_bought, /Buy 1 of 240/);
  await control(page, 'button', /^Bars in the rack/).click();
  await page.getByRole('button', { name: new RegExp(`^${k_bought}`) }).first().click();
  await control(page, 'button', 'Add a drop').click();
  const length = control(page, 'textbox', 'Length');
  await until('the drop is open', async () => (await length.inputValue()) === '60 in');
  await length.click();
  await length.fill('120');
  await length.press('Enter');
  await until('its length', async () => (await length.inputValue()) === '120 in');
  await picture(page, 'rack');
  await go(page, 'Bars');
  await said_of(page, k_bought, /Pull 1 drop of 120/);
  assert.match(await words_of(page, k_bought), /1 drop; no whole bar needed/);
  assert.doesNotMatch(await words_of(page, k_bought), /Buy/);
  await undo(page).click();
  await undo(page).click();
  await said_of(page, k_bought, /Buy 1 of 240 at 26\.00/);
});

test('what keeps a section from a plan is named, with a key to its field', {}, async (page) => {
  await open_bars(page, (button) => button.click());
  await all_proven(page);
  await control(page, 'button', /^Fill in under Shop: Flat 1\/8 × 1-1\/2, 304/).click();
  await until('the rack', () => control(page, 'heading', 'Rack').count());
});

test('a search that is not over says how far it is', {}, async (page, context) => {
  const script = readFileSync(join(site, site_file('cutter.mjs')), 'utf8');
  const slow = script.replace('port2.postMessage(0);', 'setTimeout(() => port2.postMessage(0), 1500);');
  assert.notEqual(slow, script);
  // What the page checks is the file that was built; the worker is given the other one.
  await context.route(`**/${site_file('cutter.mjs')}`, async (route) =>
    ((await route.request().allHeaders())['sec-fetch-dest'] === 'worker'
      ? route.fulfill({ contentType: 'text/javascript', body: slow }) : route.continue()));
  await open_bars(page, (button) => button.click());
  await said_of(page, k_bought, /Looking for a plan[^]*\d+ %/);
  await picture(page, 'bars-looking');
  await all_proven(page);
  assert.equal(await page.getByText(/Looking|still looking|%$/).count(), 0);
});

const k_no_worker = {
  'is refused': () => {
    window.Worker = class {
      constructor() {
        throw new Error('refused');
      }
    };
  },
  'does not start': () => {
    window.Worker = class {
      constructor() {
        setTimeout(() => this.onerror(new Event('error', { cancelable: true })), 100);
      }
      postMessage() {}
      terminate() {}
    };
  },
};
for (const [what, script] of Object.entries(k_no_worker)) {
  test(`bars are found on the page where a worker ${what}`, {}, async (page) => {
    await page.addInitScript(script);
    await open_bars(page, (button) => button.click());
    await all_proven(page);
  });
}
