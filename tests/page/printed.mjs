// Paper as a browser prints it: sheets and templates to PDF, looked into with poppler, which is not
// ours. Nothing reaches over the page, no row of a table is split, pages are as many as they say,
// and the bars of a template are 100 mm and 4 in long, both ways, within 0.2 mm.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { pictures, root, test } from './harness.mjs';

const command = process.env.TREADLE_COMMAND ?? join(root, 'build', 'release', 'treadle');
const demo = (name) => join(root, 'assets', 'demo', name);
const mm_per_inch = 25.4;
const papers = {
  letter: { width: 8.5 * mm_per_inch, height: 11 * mm_per_inch },
  a4: { width: 210, height: 297 },
};
const k_sheet_margin = 12; // of @page, left and right
const k_template_margin = 10;
const k_close_mm = 0.2;

const pixels = (mm) => (mm / mm_per_inch) * 96;

function written(words, out) {
  mkdirSync(pictures, { recursive: true });
  execFileSync(command, [...words, '--out', out]);
  return readFileSync(out, 'utf8');
}

/** Elements that reach over the width of the page, in words. Runs in the document. */
function over_the_page(wide) {
  const wrong = [];
  for (const element of document.body.querySelectorAll('*')) {
    if (element.closest('[clip-path]')) continue; // ends where its page ends
    const box = element.getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    if (box.left < -0.5 || box.right > wide + 0.5)
      wrong.push(`${element.tagName} "${element.textContent.slice(0, 40)}" from ${box.left} to ${box.right} of ${wide}`);
  }
  return wrong;
}

/** A letter too small to see at the beginning and the end of each cell. Runs in the document. */
function mark_rows() {
  const rows = document.querySelectorAll('tbody tr');
  rows.forEach((row, index) => {
    const mark = (where, cell) => {
      const span = document.createElement('span');
      span.style.cssText = 'font-size:1px;line-height:1px;white-space:nowrap';
      span.textContent = ` zq${index}q `;
      cell[where](span);
    };
    for (const cell of row.cells) {
      mark('prepend', cell);
      mark('append', cell);
    }
  });
  return rows.length;
}

const pages_of = (file) => Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [file], { encoding: 'utf8' }))[1]);

/** The text of each page. */
function texts_of(file) {
  const all = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
  return all.split('\f').slice(0, -1);
}

async function to_pdf(page, html, file, wide_mm, prepare) {
  await page.setViewportSize({ width: Math.round(pixels(wide_mm)), height: 900 });
  await page.setContent(html);
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => document.fonts.ready);
  const wrong = await page.evaluate(over_the_page, Math.round(pixels(wide_mm)));
  assert.deepEqual(wrong.slice(0, 10), [], `${wrong.length} elements over the page`);
  const told = prepare ? await page.evaluate(prepare) : 0;
  writeFileSync(file, await page.pdf({ preferCSSPageSize: true }));
  return told;
}

const sheets = [
  ['demo-inch.json', 'letter', 'inch'],
  ['demo-inch.json', 'a4', 'inch'],
  ['demo-inch.json', 'letter', 'metric'],
  ['demo-inch.json', 'a4', 'both'],
  ['demo-metric.json', 'a4', 'metric'],
  ['demo-metric.json', 'letter', 'both'],
];
/** One sheet as a PDF: inside the page, no row on two pages, each page with its number and how many. */
async function printed_whole(page, words, name, paper, least_rows) {
  const file = join(pictures, `printed-${name}`);
  const html = written(words, `${file}.html`);
  const rows = await to_pdf(page, html, `${file}.pdf`, papers[paper].width - 2 * k_sheet_margin, mark_rows);
  assert.ok(rows >= least_rows, `${rows} rows`);
  const texts = texts_of(`${file}.pdf`);
  assert.equal(texts.length, pages_of(`${file}.pdf`));
  const page_of = new Map();
  texts.forEach((text, index) => {
    assert.ok(text.includes(`Page ${index + 1} of ${texts.length}`), `page ${index + 1} of ${texts.length} says which it is`);
    for (const [, row] of text.matchAll(/zq(\d+)q/g)) {
      const before = page_of.get(row);
      assert.ok(before === undefined || before === index, `row ${row} begins on page ${before + 1} and goes on on ${index + 1}`);
      page_of.set(row, index);
    }
  });
  assert.equal(page_of.size, rows);
}

for (const [name, paper, units] of sheets)
  test(`printed: the worksheet of ${name} on ${paper} in ${units}`, {}, (page) =>
    printed_whole(page, ['sheet', demo(name), '--paper', paper, '--units', units],
      `${name.replace('.json', '')}-${paper}-${units}`, paper, 100));

// Each kind of sheet as a paper of its own, and rows that its tables surely have (tools are a list).
const kinds = { summary: 5, tools: 0, 'set-ups': 30, cutting: 5, parts: 20, workings: 50 };
for (const [kind, least_rows] of Object.entries(kinds))
  test(`printed: ${kind} alone, on both papers, in inch and metric`, {}, async (page) => {
    for (const paper of Object.keys(papers))
      for (const units of ['inch', 'metric'])
        await printed_whole(page, ['sheet', demo(`demo-${units}.json`), '--only', kind, '--paper', paper, '--units', units],
          `${kind}-${paper}-${units}`, paper, least_rows);
  });

/** The demo with one layout of each kind, by its examples. */
function with_layouts(units) {
  const list = JSON.parse(execFileSync(command, ['layout', '--list'], { encoding: 'utf8' })).layouts;
  const job = JSON.parse(readFileSync(demo(`demo-${units}.json`), 'utf8'));
  const layouts = list.map(({ kind, inputs }, index) => ({
    id: `l${index + 1}`,
    kind,
    mark: `L${index + 1}`,
    values: inputs.filter((input) => input.required).map((input) => (
      { name: input.name, text: input.example ?? input.choices[0] })),
    made: [],
  }));
  return { ...job, version: 2, layouts };
}

test('printed: a layout of every kind, on both papers, in inch and metric', {}, async (page) => {
  for (const units of ['inch', 'metric']) {
    const file = join(pictures, `layouts-${units}.json`);
    mkdirSync(pictures, { recursive: true });
    writeFileSync(file, JSON.stringify(with_layouts(units)));
    for (const paper of Object.keys(papers)) {
      await printed_whole(page, ['sheet', file, '--only', 'parts', '--paper', paper, '--units', units],
        `layouts-${paper}-${units}`, paper, 20);
      const text = await page.locator('body').innerText();
      assert.doesNotMatch(text, /It cannot be made again/);
      assert.match(text, /Handrail up a flight/);
    }
  }
});

/** The demo with words that no blank parts, in all that a person types: broad letters, other scripts. */
function with_long_words(units, word) {
  const job = JSON.parse(readFileSync(demo(`demo-${units}.json`), 'utf8'));
  const long = (length) => word.repeat(length).slice(0, length);
  const parts = job.parts.map((part, index) => ({ ...part, mark: `${long(36)}${index}`, note: long(100) }));
  job.shop.machine.stations.forEach((station, index) => { station.name = `${long(40)}${index}`; });
  return { ...job, parts, name: long(80), note: long(150), due: long(40) };
}

for (const word of ['W', 'Ä', '鉄'])
  test(`printed: words of many ${word}, with no blank between them`, {}, async (page) => {
    for (const [units, paper] of [['inch', 'letter'], ['metric', 'a4']]) {
      const file = join(pictures, `long-${units}.json`);
      mkdirSync(pictures, { recursive: true });
      writeFileSync(file, JSON.stringify(with_long_words(units, word)));
      await printed_whole(page, ['sheet', file, '--only', 'summary,tools,set-ups,cutting,parts', '--paper', paper,
        '--units', 'both'], `long-${paper}-${units}`, paper, 80);
      const out = join(pictures, `long-templates-${paper}`);
      const html = written(['template', file, '--all', '--paper', paper, '--factor-x', '1.002', '--printer', word.repeat(40)],
        `${out}.html`);
      await to_pdf(page, html, `${out}.pdf`, papers[paper].width - 2 * k_template_margin);
    }
  });

/** A picture of grey values, out of poppler: { width, height, at(x, y) } */
function picture_of(file, page, dots) {
  const pgm = execFileSync('pdftoppm', ['-r', String(dots), '-gray', '-f', String(page), '-l', String(page), file],
    { maxBuffer: 2e8 });
  const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(pgm.subarray(0, 64).toString('latin1'));
  const width = Number(head[1]);
  return { width, height: Number(head[2]), at: (x, y) => pgm[head[0].length + y * width + x] };
}

/** How long the dark run is that goes through a place, in mm; `step` one dot along it. */
function run_through(picture, x, y, step, dots) {
  const dark = (i) => picture.at(x + step[0] * i, y + step[1] * i) < 128;
  assert.ok(dark(0), `nothing is drawn at ${x}, ${y}`);
  let from = 0;
  while (dark(from - 1)) from -= 1;
  let to = 0;
  while (dark(to + 1)) to += 1;
  return ((to - from + 1) / dots) * mm_per_inch;
}

for (const paper of Object.keys(papers))
  test(`printed: the templates on ${paper}, and their bars`, {}, async (page) => {
    const file = join(pictures, `printed-templates-${paper}`);
    const list = JSON.parse(execFileSync(command, ['template', demo('demo-inch.json'), '--paper', paper, '--list'], { encoding: 'utf8' }));
    const planned = list.reduce((sum, one) => sum + (one.pages ?? 0), 0);
    const html = written(['template', demo('demo-inch.json'), '--paper', paper, '--all'], `${file}.html`);
    await to_pdf(page, html, `${file}.pdf`, papers[paper].width - 2 * k_template_margin);
    assert.equal(pages_of(`${file}.pdf`), planned);
    const dots = 600;
    const at = (mm) => Math.round((mm / mm_per_inch) * dots);
    const { height } = papers[paper];
    for (const one of [1, planned]) {
      const picture = picture_of(`${file}.pdf`, one, dots);
      const level = (up) => run_through(picture, at(60), at(height - 10 - 1 - up + 0.5), [1, 0], dots);
      const upright = (along) => run_through(picture, at(10 + along + 0.5), at(80), [0, 1], dots);
      const measured = { 'level mm': level(13), 'level in': level(8), 'upright mm': upright(2), 'upright in': upright(8.6) };
      for (const [bar, long] of Object.entries(measured)) {
        const wanted = bar.endsWith('mm') ? 100 : 4 * mm_per_inch;
        assert.ok(Math.abs(long - wanted) <= k_close_mm, `page ${one}, ${bar}: ${long} mm in place of ${wanted}`);
      }
    }
  });
