// A screen reader's hand: finds by role and name, and acts on the element itself. No coordinates.

import { until } from '../harness.mjs';
import { find } from '../words.mjs';

export async function reader(page) {
  const reach = async (thing) => {
    const element = find(page, thing);
    await until(`${thing.role} ${thing.name}`, () => element.count());
    return element;
  };
  return {
    async press(thing) {
      await (await reach(thing)).evaluate((element) => element.click());
    },
    async type(thing, text) {
      const box = await reach(thing);
      await box.evaluate((element) => element.focus());
      await box.fill(text);
      await box.press('Enter');
    },
  };
}
