// Contrast as it reaches the eye: in each look, every text on the screen stands out from what lies
// under it by 4.5 at least (WCAG 2.2, 1.4.3), read from the pixels and not from the palette.

import assert from 'node:assert/strict';

import { looks, test } from './harness.mjs';
import { settled, walk } from './walk.mjs';

const k_least = 4.5;
const k_most_told = 100;

/** Boxes of words that are in sight, in the page's pixels. Runs in the page. */
function words_in_sight() {
  const boxes = [];
  const mirror = document.getElementById('mirror');
  const dialog = mirror.querySelector(':scope > .m-dialog');
  for (const node of (dialog ?? mirror).querySelectorAll('p, h1, h2, h3, h4, button')) {
    const name = node.textContent;
    const box = node.getBoundingClientRect();
    const area = node.parentElement.closest('.m-scroll')?.getBoundingClientRect();
    const [top, end] = area ? [area.top, area.bottom] : [0, innerHeight];
    const whole = box.top >= top && box.bottom <= end && box.right <= innerWidth && box.left >= 0;
    if (whole && name.trim() && box.width > 4 && box.height > 4)
      boxes.push({ name: name.slice(0, 60), x: box.x, y: box.y, w: box.width, h: box.height });
  }
  return boxes;
}

/** Of each box: the best ratio of its ground with an ink of it. Runs in an empty page. */
async function ratios({ png, boxes }) {
  const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob());
  const canvas = new OffscreenCanvas(image.width, image.height);
  const brush = canvas.getContext('2d', { willReadFrequently: true });
  brush.drawImage(image, 0, 0);
  const linear = (channel) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
  const luminance = (colour) => 0.2126 * linear((colour >> 16) / 255)
    + 0.7152 * linear(((colour >> 8) & 255) / 255) + 0.0722 * linear((colour & 255) / 255);
  return boxes.map(({ x, y, w, h }) => {
    const { data } = brush.getImageData(Math.round(x), Math.round(y), Math.ceil(w), Math.ceil(h));
    const counts = new Map();
    for (let i = 0; i < data.length; i += 4) {
      const colour = (data[i] << 16) | (data[i + 1] << 8) | data[i + 2];
      counts.set(colour, (counts.get(colour) ?? 0) + 1);
    }
    const [[ground]] = [...counts].sort((a, b) => b[1] - a[1]);
    const under = luminance(ground);
    let best = 1;
    for (const [colour, count] of counts) {
      if (count < 3) continue; // the smoothed edge of a letter is no ink
      const over = luminance(colour);
      best = Math.max(best, (Math.max(over, under) + 0.05) / (Math.min(over, under) + 0.05));
    }
    return best;
  });
}

test(`every text stands out by ${k_least} in each look, read from the pixels`, { viewport: { width: 1280, height: 800 } },
  async (page, context) => {
    // In a window of its own: a page behind another of the same window draws once a second.
    const aside = await context.browser().newContext();
    const counter = await aside.newPage();
    const weak = new Map();
    const read = new Set();
    let count = 0;
    await walk(page, async (view) => {
      if (await page.locator('#preview').isVisible()) return; // axe reads the document's own
      for (const [look, media] of Object.entries(looks)) {
        await page.emulateMedia(media);
        await settled(page);
        // What stands in every view is read once.
        const boxes = (await page.evaluate(words_in_sight)).filter(({ name, w }) => {
          const key = `${look} ${name} ${w}`;
          return !read.has(key) && read.add(key);
        });
        if (boxes.length === 0) continue;
        const png = (await page.screenshot()).toString('base64');
        (await counter.evaluate(ratios, { png, boxes })).forEach((ratio, i) => {
          ++count;
          if (ratio < k_least) weak.set(`${look}: "${boxes[i].name}" ${ratio.toFixed(2)}`, view);
        });
      }
    });
    await aside.close();
    assert.ok(count > 1000, `only ${count} texts were read`);
    const told = [...weak].slice(0, k_most_told).map(([fault, view]) => `${view}, ${fault}`);
    assert.ok(weak.size === 0, `${weak.size} texts are weak:\n${told.join('\n')}`);
  });
