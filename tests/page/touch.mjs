// A finger works every control that a mouse does, on a tablet held either way.

import { open, picture, test, until } from './harness.mjs';
import { accept_notice, go, part_row, place, print } from './words.mjs';

for (const [width, height] of [
  [1024, 768],
  [800, 1280],
]) {
  const tablet = { viewport: { width, height }, hasTouch: true, isMobile: true };
  test(`a tap opens the place of the sheets at ${width} x ${height}`, tablet, async (page) => {
    await open(page);
    await accept_notice(page, (button) => button.tap());
    await until('a verdict is on the screen', () => part_row(page).isVisible());
    await picture(page, `tablet-${width}x${height}`);
    await go(page, 'Sheets', 'tap');
    await until('print is offered', () => print(page).isVisible());
  });
}
