// Names of the controls that the tests press, in one place: when the page renames one, so does this.
//
// A thing is { role, name }: what a screen reader says. How it is pressed is a hand's affair
// (tests/page/hands/).

import { control, until } from './harness.mjs';

export const k_part = 'HB1'; // the demo job's first part, a punched plate

const button = (name) => ({ role: 'button', name });
const field = (name) => ({ role: 'textbox', name });
const heading = (name) => ({ role: 'heading', name });

/** What the keys of the number pad say that are no figure. */
const signs = { '/': '/ fraction bar', '-': '- dash', '.': '. point', "'": "' feet", '"': '" inches', ' ': 'space' };

/** Every control that more than one test needs. */
export const things = {
  understood: button('Understood'),
  undo: button(/^Undo/),
  redo: button(/^Redo/),
  place: (name) => ({ role: 'tab', name }),
  part: (mark) => button(new RegExp(`^${mark}, `)),
  change_sizes: (mark) => button(new RegExp(`^Change sizes of ${mark}`)),
  close_panel: button('Close this panel'),
  thickness: field('Thickness'),
  add_operation: button('Add an operation'),
  add_punch: button('Add operation: Punch'),
  operation: (number, words = '') => button(new RegExp(`^Operation ${number}: ${words}`)),
  hole_diameter: field('Hole diameter'),
  along: field('Along'),
  across: field('Across'),
  flat_view: (mark) => ({ role: 'img', name: new RegExp(`^Flat view of ${mark}`) }),
  working: button(/^Show working/),
  pad_key: (sign) => button(signs[sign] ?? sign),
  pad_done: button('Done'),
  set_up: (number) => heading(`Set-up ${number}`),
  to_machine: button(/^To the machine/),
  hold: button('Hold the work here'),
  go_on: button('Go on'),
  leave_machine: button('Leave the machine'),
  look_at_sheet: button('Look at the worksheet'),
  print_preview: button('Print'),
  close_preview: button('Close'),
  find: button('Find'),
  find_words: field(/^Mark, size/),
  close_find: button('Close the search'),
  print: button(/^Print the worksheet/),
  save_file: button(/^Save file/),
  open_file: button(/^Open file/),
};

/** A thing in the page, as playwright finds it. */
export const find = (page, thing) =>
  control(page, thing.role, thing.name, typeof thing.name === 'string');

export const undo = (page) => find(page, things.undo);
export const redo = (page) => find(page, things.redo);
export const open_file = (page) => find(page, things.open_file);
export const save_file = (page) => find(page, things.save_file);
export const print = (page) => find(page, things.print);
export const place = (page, name) => find(page, things.place(name));

/**
 * Goes to a place, and waits until it is there: a click is taken by the frame after it, and what a test
 * finds before that frame stands in the place it came from.
 */
export async function go(page, name, how = 'click') {
  await place(page, name)[how]();
  await until(`the place ${name}`, async () =>
    (await place(page, name).getAttribute('aria-selected')) === 'true');
}
export const part_row = (page, mark = k_part) => find(page, things.part(mark));

/** What the list says of a part: "HB1, Plate 3/8 × 8 × 8, A36, 14 pieces: fits". */
export async function verdict_words(page, mark = k_part) {
  const row = part_row(page, mark);
  return (await row.getAttribute('aria-label')) ?? (await row.textContent()) ?? '';
}

/** The safety notice stands before everything else at first start. */
export async function accept_notice(page, press = (button) => button.click()) {
  const understood = find(page, things.understood);
  await until('the notice', () => understood.isVisible());
  await press(understood);
  await until('the notice is gone', async () => (await understood.count()) === 0);
}

/** Opens the sizes of the chosen part and types another thickness. */
export async function set_thickness(page, text) {
  await find(page, things.change_sizes(k_part)).click();
  const box = find(page, things.thickness);
  await box.click();
  await box.fill(text);
  await box.press('Enter');
}
