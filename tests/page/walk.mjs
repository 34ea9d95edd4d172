// Every view of the page, by name, and how one gets there from any other: for the tests that look at
// all of them. Goes by role and name alone, so it works at every size.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { give_file, open, root, until } from './harness.mjs';
import { find, k_part, things } from './words.mjs';

const button = (name) => ({ role: 'button', name });
const field = (name) => ({ role: 'textbox', name });
const tab = (name) => ({ role: 'tab', name });

export const has = async (page, thing) => (await find(page, thing).count()) > 0;

/** Acts on the element itself, as a screen reader does. */
export async function press(page, thing) {
  const element = find(page, thing);
  await until(`${thing.role} ${thing.name}`, () => element.count());
  await element.evaluate((found) => found.click());
  await settled(page);
}
async function press_if(page, thing) {
  if (await has(page, thing)) await press(page, thing);
}
export async function type(page, thing, text) {
  const box = find(page, thing);
  await until(`${thing.role} ${thing.name}`, () => box.count());
  await box.evaluate((found) => found.focus());
  await box.fill(text);
  await box.press('Enter');
  await settled(page);
}

/** Until no frame is asked for: the page draws on request, so a few silent refreshes say so. */
export function settled(page) {
  return page.evaluate(async () => {
    const stage = document.getElementById('stage');
    const refresh = () => new Promise((done) => requestAnimationFrame(done));
    for (let silent = 0, last = -1; silent < 3; await refresh()) {
      silent = stage.dataset.frames === last ? silent + 1 : 0;
      last = stage.dataset.frames;
    }
  });
}

/** The first part, nothing open beside it. */
export async function home(page, mark = k_part) {
  await press_if(page, things.understood);
  if (await page.locator('#preview').isVisible()) await press(page, things.close_preview);
  await press_if(page, things.close_find);
  await press_if(page, things.pad_done);
  await press_if(page, things.go_on);
  await press_if(page, things.leave_machine);
  await press_if(page, button('All lessons'));
  await press_if(page, button('Back to the job'));
  await press_if(page, button('Back to the parts'));
  await press(page, things.place('Parts'));
  await press_if(page, things.close_panel);
  await press_if(page, button('Add nothing'));
  await press_if(page, button('Back to the list'));
  await press(page, things.part(mark));
}

async function operation(page, mark, words, panel) {
  await home(page, mark);
  const row = things.operation('\\d+', words);
  if ((await find(page, row).getAttribute('aria-pressed')) !== 'true') await press(page, row);
  await press(page, panel);
}

/** Names of the pages of a place that is a book, as its list or its choice has them. */
export async function pages_of(page, book) {
  await press(page, things.place(book));
  const choice = find(page, { role: 'combobox', name: 'Shown' });
  return (await choice.count())
    ? choice.locator('option').allTextContents()
    : find(page, { role: 'group', name: book }).getByRole('button').allTextContents();
}
export async function open_page(page, book, index) {
  await press_if(page, things.close_find);
  await press(page, things.place(book));
  const choice = find(page, { role: 'combobox', name: 'Shown' });
  if (await choice.count()) await choice.selectOption({ index });
  else
    await find(page, { role: 'group', name: book })
      .getByRole('button')
      .nth(index)
      .evaluate((found) => found.click());
  await settled(page);
}

const at_place = (name) => async (page) => {
  await home(page);
  await press(page, things.place(name));
};

async function bars(page) {
  await at_place('Bars')(page);
  await until('the bars', () => page.getByText(/^\d+ sections: .* bars, proven/).count());
  await settled(page);
}

async function lessons(page) {
  await at_place('Jobs')(page);
  await press(page, button('Lessons and demonstrations'));
  await press_if(page, button('All lessons'));
}

/** A new layout of this kind, as its examples fill it in. */
async function layout(page, kind) {
  await home(page);
  await press_if(page, button('Back to the list')); // narrow screens show one of the two
  await press(page, button(/^Lay out parts/));
  await find(page, { role: 'combobox', name: 'What to make' }).selectOption({ label: kind });
  await settled(page);
}
/** A step of the first lesson, as nobody has answered it yet. */
async function lesson(page, step) {
  await lessons(page);
  await press(page, button(/^Open lesson: Punching force/));
  await press(page, button('Reset the lesson'));
  for (let i = 0; i < step; i += 1) await press(page, button('Next step'));
}

/** So many steps from the first one; entering goes to where the work stands. */
async function at_machine(page, steps) {
  await home(page);
  await press(page, things.place('Order'));
  await press(page, things.to_machine);
  while (await has(page, button('Back one step')) && !(await find(page, button('Back one step')).isDisabled()))
    await press(page, button('Back one step'));
  for (let i = 0; i < steps; i += 1) await press(page, button('Next step'));
}

/** `go` leads there. A view with `last` changes the job: those come last, in this order. */
const fixed = [
  { name: 'parts', go: (page) => home(page) },
  { name: 'part-list', go: async (page) => {
    await home(page);
    await press_if(page, button('Back to the list'));
  } },
  { name: 'part-finished', go: async (page) => {
    await home(page, 'HC1');
    await press_if(page, tab('Finished'));
  } },
  { name: 'part-bent', go: async (page) => {
    await home(page, 'HK4');
    await press_if(page, tab('Finished'));
  } },
  { name: 'part-bends', go: async (page) => {
    await home(page, 'HK4');
    await press_if(page, tab('Bends'));
  } },
  { name: 'part-does-not-fit', go: (page) => home(page, 'HT1') },
  { name: 'part-cannot-be-said', go: (page) => home(page, 'HP2') },
  { name: 'part-up-to', go: (page) => home(page, 'HB3') },
  { name: 'part-sizes', go: async (page) => {
    await home(page);
    await press(page, things.change_sizes(k_part));
  } },
  { name: 'number-entry', go: async (page) => {
    await home(page);
    await press(page, things.change_sizes(k_part));
    const box = find(page, things.thickness);
    const by_finger = await page.evaluate(() => matchMedia('(pointer: coarse)').matches);
    await (by_finger ? box.tap() : box.click());
    await page.keyboard.type('7/16');
    await settled(page);
  } },
  { name: 'own-grade', go: async (page) => {
    await home(page);
    await press(page, things.change_sizes(k_part));
    await press(page, button('Type in a grade of your own'));
  } },
  { name: 'operation-punch', go: (page) => operation(page, 'HB1', 'Punch', button(/^Change operation/)) },
  { name: 'operation-cut', go: (page) => operation(page, 'HB1', 'Shear', button(/^Change operation/)) },
  { name: 'operation-notch', go: (page) => operation(page, 'HN1', 'Notch', button(/^Change operation/)) },
  { name: 'operation-bend', go: (page) => operation(page, 'HK1', 'Bend', button(/^Change operation/)) },
  { name: 'operation-saddle', go: (page) => operation(page, 'HR1', 'Saddle', button(/^Change operation/)) },
  { name: 'operation-choice', go: async (page) => {
    await home(page);
    await press(page, things.add_operation);
  } },
  { name: 'working', go: (page) => operation(page, 'HB1', 'Punch', things.working) },
  { name: 'order', go: at_place('Order') },
  { name: 'bars', go: bars },
  { name: 'bars-cuts', go: async (page) => {
    await bars(page);
    await press(page, button(/^Bar 144: /));
    await find(page, button(/^Cut 1: /)).scrollIntoViewIfNeeded();
    await settled(page);
  } },
  { name: 'limits-station', go: async (page) => {
    await at_place('Limits')(page);
    await press(page, tab('One station'));
  } },
  { name: 'limits-machines', go: async (page) => {
    await at_place('Limits')(page);
    await press(page, tab('Which machine'));
  } },
  { name: 'layout-guard', go: (page) => layout(page, 'Guard or railing, level') },
  { name: 'layout-frame', go: (page) => layout(page, 'Frame of angle or flat bar') },
  { name: 'jobs', go: at_place('Jobs') },
  { name: 'lessons', go: lessons },
  { name: 'lesson-example', go: async (page) => {
    await lesson(page, 1);
    await press(page, button('Show all of it'));
    await press(page, button('Break it'));
  } },
  { name: 'lesson-exercise', go: async (page) => {
    await lesson(page, 2);
    await type(page, field(/^Your answer/), '1 ton');
    await press(page, button('Check the answer'));
  } },
  { name: 'lesson-verdict', go: async (page) => {
    await lesson(page, 4);
    await press(page, button('It cannot be said'));
  } },
  { name: 'lesson-demonstration', go: (page) => lesson(page, 5) },
  { name: 'sheets', go: at_place('Sheets') },
  { name: 'sheet-preview', go: async (page) => {
    await at_place('Sheets')(page);
    await press(page, things.look_at_sheet);
    await until('the sheet', () => page.frameLocator('#preview-frame').locator('svg').first().count());
  } },
  { name: 'at-machine-set-up', go: (page) => at_machine(page, 0) },
  { name: 'at-machine-first-piece', go: (page) => at_machine(page, 1) },
  { name: 'at-machine-run', go: (page) => at_machine(page, 2) },
  { name: 'at-machine-hold', go: async (page) => {
    await at_machine(page, 0);
    await press(page, things.hold);
  } },
  { name: 'find', go: async (page) => {
    await home(page);
    await press(page, things.find);
  } },
  { name: 'found', go: async (page) => {
    await home(page);
    await press(page, things.find);
    await find(page, things.find_words).fill('punch'); // Enter would go to what is found first
    await until('what is found', () => find(page, { role: 'group', name: 'Found' }).getByRole('button').count());
    await settled(page);
  } },
];

const changing = [
  { name: 'field-refused', go: async (page) => {
    await home(page);
    await press(page, things.change_sizes(k_part));
    await type(page, things.thickness, 'half an inch');
  } },
  { name: 'file-refused', go: async (page) => {
    await at_place('Sheets')(page);
    await give_file(page, () => press(page, things.open_file), 'bad.json', '{"format": "treadle-job"}');
    await until('the refusal', () => page.getByText(/was not opened/).count());
    await settled(page); // it is said before it is drawn
  } },
  { name: 'job-long-names', go: async (page) => {
    await at_place('Sheets')(page);
    await type(page, field('Name of the job'), 'A name that is longer than any line of a tablet has room for, as people give');
    await press(page, things.place('Parts'));
  } },
  { name: 'job-metric', go: async (page) => {
    await at_place('Jobs')(page);
    await press(page, button(/^Begin with the demo job in millimetres/));
    await press(page, things.place('Parts'));
  } },
  { name: 'job-empty', go: async (page) => {
    await press(page, things.place('Jobs'));
    await press(page, button('New empty job'));
    await press(page, things.place('Parts'));
  } },
  { name: 'job-empty-order', go: (page) => press(page, things.place('Order')) },
  { name: 'job-empty-bars', go: (page) => press(page, things.place('Bars')) },
];
const plain = (title) => title.split(/[,(]/)[0].trim().toLowerCase().replace(/[^a-z0-9]+/g, '-');

const books = ['Shop', 'Help'];

/** The views that every start has, and a page of each book. */
export const names_of_views = () => [...fixed.map(({ name }) => name), ...books];

/** Opens the page in one of these views. */
export async function go_to(page, name) {
  await open(page);
  await settled(page);
  await press_if(page, things.understood); // not for a later page of the same browser
  const view = fixed.find((one) => one.name === name);
  await (view ? view.go(page) : open_page(page, name, 1));
}

/** Goes from the first start through every view and calls `visit(name)` in each. */
export async function walk(page, visit, { with_changes = true } = {}) {
  await open(page);
  await settled(page);
  await visit('notice');
  await press(page, things.understood);
  const pages = [];
  for (const book of books) {
    (await pages_of(page, book)).forEach((title, index) => pages.push({
      name: `${plain(book)}-${String(index + 1).padStart(2, '0')}-${plain(title)}`,
      go: () => open_page(page, book, index),
    }));
  }
  for (const view of [...fixed, ...pages, ...(with_changes ? changing : [])]) {
    try {
      await view.go(page);
    } catch (error) {
      throw new Error(`on the way to the view "${view.name}": ${error.message}`);
    }
    await visit(view.name);
  }
}
