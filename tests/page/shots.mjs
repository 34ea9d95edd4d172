// Pictures of every view in three looks and two sizes, for people to look at: build/shots/.
//
//   node tests/page/shots.mjs [part of a view's name]

import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { looks, root, with_pages } from './harness.mjs';
import { go_to, settled, walk } from './walk.mjs';

const only = process.argv[2];
const into = process.env.TREADLE_SHOTS ?? join(root, 'build', 'shots');
const sizes = {
  'touch-800x1280': { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true },
  'desk-1280x800': { viewport: { width: 1280, height: 800 } },
};
/** A browser that gives no WebGL. */
function without_webgl() {
  const get = HTMLCanvasElement.prototype.getContext;
  HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
    return /webgl/.test(kind) ? null : get.call(this, kind, ...rest);
  };
}

/** The view that the page shows, in each look. Returns how many pictures that makes. */
async function shoot(page, size, view) {
  if (only && !view.includes(only)) return 0;
  for (const [look, media] of Object.entries(looks)) {
    await page.emulateMedia(media);
    await settled(page);
    await page.screenshot({ path: join(into, `${look}-${size}-${view}.png`) });
  }
  return Object.keys(looks).length;
}

async function every_view(page, size) {
  let count = 0;
  await walk(page, async (view) => { count += await shoot(page, size, view); });
  return count;
}

async function plain_form(page, size) {
  await page.addInitScript(without_webgl);
  await go_to(page, 'part-sizes');
  return shoot(page, size, 'without-webgl');
}

/** One page with all pictures: a row for each view, a column for each look. */
function write_index() {
  const files = readdirSync(into).filter((name) => name.endsWith('.png'));
  const row = (size, view) => Object.keys(looks)
    .map((look) => `${look}-${size}-${view}.png`)
    .map((file) => (files.includes(file)
      ? `<td><a href="${file}"><img src="${file}" alt="${file}" loading="lazy" width="400"></a></td>`
      : '<td>not there</td>'))
    .join('');
  const tables = Object.keys(sizes).map((size) => {
    const start = `light-${size}-`;
    const views = files.filter((name) => name.startsWith(start)).map((name) => name.slice(start.length, -4));
    const rows = views.map((view) => `<tr><th scope="row">${view}</th>${row(size, view)}</tr>`);
    const heads = Object.keys(looks).map((look) => `<th scope="col">${look}</th>`).join('');
    return `<h2>${size}</h2><table><tr><th scope="col">view</th>${heads}</tr>${rows.join('\n')}</table>`;
  });
  writeFileSync(join(into, 'index.html'), '<!doctype html><html lang="en"><meta charset="utf-8">'
    + `<title>Treadle: every view</title><h1>Every view</h1>${tables.join('\n')}</html>\n`);
}

rmSync(into, { recursive: true, force: true });
mkdirSync(into, { recursive: true });
const from = Date.now();
const outcome = await with_pages(Object.entries(sizes).flatMap(([size, options]) => [
  { name: `${size}, every view`, options, body: (page) => every_view(page, size) },
  { name: `${size}, without WebGL`, options, body: (page) => plain_form(page, size) },
]));
write_index();
for (const { name, result, error } of outcome)
  console.log(error ? `  FAIL  ${name}: ${error.message}` : `  pass  ${name}: ${result} pictures`);
const good = outcome.filter(({ error, result }) => !error && (only || result > 0)).length;
console.log(`${into}/index.html, ${((Date.now() - from) / 1000).toFixed(0)} s`);
console.log(`SHOTS ${good} passed, ${outcome.length - good} failed`);
process.exitCode = good === outcome.length ? 0 : 1;
