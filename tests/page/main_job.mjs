// The main job, in one place: what somebody comes to the page for, from the first start to the file
// in hand. It says what is done and what must be seen; how a control is worked is the hand's affair.
//
// A hand (tests/page/hands/) has: press(thing), type(thing, text), close_list() and `narrow`.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';

import { open, said, until } from './harness.mjs';
import { find, part_row, place, things, verdict_words } from './words.mjs';

const k_mark = 'HB3'; // demo job: plate 1/2, fits only up to a strength
const k_thinner = '7/16'; // 1/16 less, which any metal of the grade fits
const k_hole = '13/16'; // a punch of the demo's crib
const k_way_ms = 60_000;

/** The page must not open a print dialog, only ask for one. */
export async function count_prints(page) {
  await page.addInitScript(() => {
    window.print = () => {
      window.top.prints = (window.top.prints ?? 0) + 1;
    };
  });
}
const prints = (page) => page.evaluate(() => window.prints ?? 0);
const there = (page, thing) => until(`${thing.role} ${thing.name}`, () => find(page, thing).count());
const count = (page, thing) => find(page, thing).count();

async function thinner(page, hand) {
  await hand.press(things.part(k_mark));
  assert.match(await verdict_words(page, k_mark), /: fits up to/);
  await hand.press(things.change_sizes(k_mark));
  await hand.type(things.thickness, k_thinner);
  await until('the verdict in words', async () =>
    /Plate 7\/16 .*: fits$/.test(await part_words(page, hand)));
}

/** What is said of the part: in the list, or where the list is hidden, in the status. */
async function part_words(page, hand) {
  if (await part_row(page, k_mark).count()) return verdict_words(page, k_mark);
  assert.ok(hand.narrow, 'the list is gone');
  return (await said(page)).replaceAll('\n', ' ');
}

const drawing = (page) => find(page, things.flat_view(k_mark)).screenshot();

async function one_more_hole(page, hand) {
  const fourth = things.operation(3, 'Punch 13/16 round');
  await hand.press(things.close_panel);
  await there(page, things.add_operation);
  const before = await drawing(page);
  await hand.press(things.add_operation);
  await hand.press(things.add_punch);
  await hand.type(things.hole_diameter, k_hole);
  await hand.type(things.along, '3');
  await hand.type(things.across, '1-1/2');
  await there(page, fourth);
  await until('the hole on the drawing', async () => !before.equals(await drawing(page)));
  return fourth;
}

async function back_and_forth(page, hand, hole) {
  for (let i = 0; i < 10 && (await count(page, hole)); ++i) await hand.press(things.undo);
  assert.equal(await count(page, hole), 0, 'ten steps back and it is still there');
  for (let i = 0; i < 10 && !(await find(page, things.redo).isDisabled()); ++i)
    await hand.press(things.redo);
  await there(page, hole);
}

async function order_and_bars(page, hand) {
  await hand.press(things.place('Order'));
  await there(page, things.set_up(1));
  await hand.press(things.place('Bars'));
  await until('the bars', () => page.getByText(/^\d+ sections: .* bars, proven/).count());
}

async function worksheet(page, hand) {
  await hand.press(things.place('Sheets'));
  await hand.press(things.look_at_sheet);
  const paper = page.frameLocator('#preview-frame').locator('body');
  await until('the part on paper', async () => (await paper.innerText()).includes(k_mark));
  await hand.press(things.print_preview);
  await until('a print is asked for', async () => (await prints(page)) === 1);
  await hand.press(things.close_preview);
  await hand.press(things.print);
  await until('another print is asked for', async () => (await prints(page)) === 2);
}

/** What the page does when `thing` is pressed; to get there may take many keys. */
async function answer(page, event, hand, thing) {
  const [answered] = await Promise.all([
    page.waitForEvent(event, { timeout: k_way_ms }),
    hand.press(thing),
  ]);
  return answered;
}
const saved = async (page, hand) =>
  readFileSync(await (await answer(page, 'download', hand, things.save_file)).path());

async function save_and_open(page, hand, hole) {
  const bytes = await saved(page, hand);
  await hand.press(things.undo);
  await hand.press(things.undo);
  const chooser = await answer(page, 'filechooser', hand, things.open_file);
  await chooser.setFiles({ name: 'saved.json', mimeType: 'application/json', buffer: bytes });
  await until('the parts', async () =>
    (await place(page, 'Parts').getAttribute('aria-selected')) === 'true');
  await hand.press(things.part(k_mark));
  await there(page, hole);
  await hand.press(things.place('Sheets'));
  assert.equal((await saved(page, hand)).toString('utf8'), bytes.toString('utf8'));
}

export async function main_job(page, make_hand) {
  await count_prints(page);
  await open(page);
  const hand = await make_hand(page);
  await hand.press(things.understood);
  await until('the notice is gone', async () => (await count(page, things.understood)) === 0);
  await thinner(page, hand);
  const hole = await one_more_hole(page, hand);
  await back_and_forth(page, hand, hole);
  await order_and_bars(page, hand);
  await worksheet(page, hand);
  await save_and_open(page, hand, hole);
}
