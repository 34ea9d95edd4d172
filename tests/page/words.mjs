// Names of the controls that the tests press, in one place: when the page renames one, so does this.

import { control, until } from './harness.mjs';

export const k_part = 'HB1'; // the demo job's first part, a punched plate

export const undo = (page) => control(page, 'button', /^Undo/);
export const redo = (page) => control(page, 'button', /^Redo/);
export const open_file = (page) => control(page, 'button', /^Open file/);
export const save_file = (page) => control(page, 'button', /^Save file/);
export const print = (page) => control(page, 'button', /^Print the worksheet/);
export const place = (page, name) => control(page, 'tab', name);
export const part_row = (page, mark = k_part) => control(page, 'button', new RegExp(`^${mark}, `));

/** What the list says of a part: "HB1, Plate 3/8 × 8 × 8, A36, 14 pieces: fits". */
export async function verdict_words(page, mark = k_part) {
  const row = part_row(page, mark);
  return (await row.getAttribute('aria-label')) ?? (await row.textContent()) ?? '';
}

/** The safety notice stands before everything else at first start. */
export async function accept_notice(page, press = (button) => button.click()) {
  const understood = control(page, 'button', 'Understood');
  await until('the notice', () => understood.isVisible());
  await press(understood);
  await until('the notice is gone', async () => (await understood.count()) === 0);
}

/** Opens the sizes of the chosen part and types another thickness. */
export async function set_thickness(page, text) {
  await control(page, 'button', new RegExp(`^Change sizes of ${k_part}`)).click();
  const field = control(page, 'textbox', 'Thickness');
  await field.click();
  await field.fill(text);
  await field.press('Enter');
}
