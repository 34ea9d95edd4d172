// The main job by finger on five screens; by keys, and by role and name alone, on two of them, or
// with TREADLE_LONG=1 on all.

import { is_long, test } from './harness.mjs';
import { keyboard } from './hands/keyboard.mjs';
import { reader } from './hands/reader.mjs';
import { touch } from './hands/touch.mjs';
import { main_job } from './main_job.mjs';

const screens = [
  [768, 1024],
  [800, 1280],
  [1024, 768],
  [1280, 800],
  [1920, 1080],
];
const hands = {
  'by touch alone': { make: touch, options: { hasTouch: true, isMobile: true } },
  'by keyboard alone': { make: keyboard, options: {} },
  'by role and name alone': { make: reader, options: {} },
};

for (const [how, { make, options }] of Object.entries(hands)) {
  const few = !is_long && make !== touch;
  for (const [width, height] of few ? [screens[1], screens[3]] : screens) {
    test(`the main job ${how} at ${width} x ${height}`, { viewport: { width, height }, ...options },
      (page) => main_job(page, make));
  }
}
