// Every control that is drawn is in the accessibility tree, with the same role, name and place; big
// enough and far enough apart for the hand that works it; and axe-core finds nothing.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { test } from './harness.mjs';
import { differences, drawn, too_small, tree } from './drawn.mjs';
import { settled, walk } from './walk.mjs';

const axe_source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const sizes = [[768, 1024], [800, 1280], [1024, 768], [1280, 800]].map(([width, height]) => ({ width, height }));
const densities = {
  shop: { options: { hasTouch: true, isMobile: true }, least: { high: 56, apart: 12 } },
  desk: { options: {}, least: { high: 32, apart: 8 } },
};
const k_most_told = 200;

/**
 * What axe-core has against a document (of the page or of a frame in it), in words. The mirror has no
 * ink of its own, so contrast is judged there from the theme (tests/headless_ui) and the picture.
 */
async function axe(frame, with_contrast) {
  await frame.evaluate(`window.axe ?? (() => { ${axe_source} })()`);
  const { violations } = await frame.evaluate((contrast) => window.axe.run(document, {
    iframes: false,
    resultTypes: ['violations'],
    rules: { 'color-contrast': { enabled: contrast } },
  }), with_contrast);
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ html }) => `${id}: ${help}: ${html.slice(0, 160)}`));
}

/** Fails with each fault once, and the first view that has it. */
function none(wrong) {
  const once = new Map();
  for (const { view, fault } of wrong) once.set(fault, once.get(fault) ?? view);
  const told = [...once].slice(0, k_most_told).map(([fault, view]) => `${view}: ${fault}`);
  assert.ok(wrong.length === 0, `${once.size} faults:\n${told.join('\n')}`);
}

/** Each view is gone to once and looked at on all screens: turning a tablet is no new way. */
for (const [density, { options, least }] of Object.entries(densities)) {
  test(`the tree holds every control drawn, big enough for the ${density}, on ${sizes.length} screens`,
    { viewport: sizes[0], ...options }, async (page, context) => {
      const door = await context.newCDPSession(page);
      const wrong = [];
      let count = 0;
      await walk(page, async (view) => {
        if (await page.locator('#preview').isVisible()) return; // the mirror is out of reach
        for (const size of sizes) {
          await page.setViewportSize(size);
          await settled(page);
          const { controls } = await drawn(page);
          const found = await tree(page, door);
          const faults = [...differences(controls, found), ...too_small(controls, found, least)];
          const where = `${view} at ${size.width} x ${size.height}`;
          wrong.push(...faults.map((fault) => ({ view: where, fault })));
          count += controls.length;
        }
      });
      assert.ok(count > 500 * sizes.length, `only ${count} controls were drawn`);
      none(wrong);
    });
}

test('axe-core has nothing against any view, nor against the documents', { viewport: { width: 1024, height: 768 } },
  async (page) => {
    const wrong = [];
    let documents = 0;
    await walk(page, async (view) => {
      wrong.push(...(await axe(page, false)).map((fault) => ({ view, fault })));
      if (!(await page.locator('#preview').isVisible())) return;
      const paper = await (await page.locator('#preview-frame').elementHandle()).contentFrame();
      wrong.push(...(await axe(paper, true)).map((fault) => ({ view: `${view}, the document`, fault })));
      ++documents;
    });
    assert.ok(documents > 0, 'no document was looked at');
    none(wrong);
  });
