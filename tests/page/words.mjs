// Names of the controls that the tests press, in one place: when the page renames one, so does this.

import { control } from './harness.mjs';

export const undo = (page) => control(page, 'button', /^undo/i);
export const redo = (page) => control(page, 'button', /^redo/i);
export const open_file = (page) => control(page, 'button', /open file|import/i);
export const save_file = (page) => control(page, 'button', /save file|export/i);
export const worksheet = (page) => control(page, 'button', /worksheet|sheet/i);
export const print = (page) => control(page, 'button', /^print/i);
export const thickness = (page) => control(page, 'textbox', /thickness/i);
export const verdict = (page) => control(page, 'status', /verdict/i);

/** The safety notice stands before everything else at first start. */
export async function accept_notice(page) {
  const understood = control(page, 'button', /understood|i have read/i);
  if (await understood.count()) await understood.click();
}

/** Types a value into a field of the page and leaves it with Enter. */
export async function type_into(page, field, text) {
  await field.click();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}
