// Links to jobs, and codes of them on paper, held against programs that are not ours: zlib as Node
// has it reads our links and makes links for us, and zbar reads the printed code.
//
//   node tests/link/run.mjs [build/release]
//
// Ends with `LINK n passed, n failed`.

import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deepStrictEqual, equal, ok } from 'node:assert/strict';
import { fileURLToPath } from 'node:url';
import zlib from 'node:zlib';

const root = fileURLToPath(new URL('../..', import.meta.url));
const build = process.argv[2] ?? 'build/release';
const program = join(root, build, 'treadle');
const folder = mkdtempSync(join(tmpdir(), 'treadle-link-'));
const page = 'https://treadle.example/';
let passed = 0;
let failed = 0;

function check(name, test) {
  try {
    test();
    passed += 1;
  } catch (error) {
    failed += 1;
    console.log(`FAILED ${name}: ${error.message.split('\n').slice(0, 12).join('\n')}`);
  }
}

const treadle = (...words) => execFileSync(program, words, { encoding: 'utf8', maxBuffer: 1 << 26 });
const demo = (name) => join(root, 'assets/demo', `demo-${name}.json`);
const job = (name) => JSON.parse(readFileSync(demo(name), 'utf8'));
function file(name, value) {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(value));
  return path;
}

// ---- the format, written a second time from its description in link.h and short_words.h ----------

const bytes = readFileSync(join(root, 'assets/link/dictionary-1.txt'));
const [wordLines, textLines] = bytes.toString('utf8').split('\n\n');
const codes = [...Array(32).keys(), ...Array.from({ length: 11 }, (_, i) => 0xf5 + i)];
const words = wordLines.split('\n').map((word, i) => ({ word: Buffer.from(word), code: codes[i] }));
const longestFirst = [...words].sort((a, b) => b.word.length - a.word.length);

function shortened(text) {
  const from = Buffer.from(text);
  const out = [];
  for (let at = 0; at < from.length; ) {
    const found = longestFirst.find(({ word }) => from.subarray(at, at + word.length).equals(word));
    out.push(found ? found.code : from[at]);
    at += found ? found.word.length : 1;
  }
  return Buffer.from(out);
}
function lengthened(short) {
  const parts = [];
  for (const byte of short) {
    const found = words.find(({ code }) => code === byte);
    parts.push(found ? found.word : Buffer.from([byte]));
  }
  return Buffer.concat(parts).toString('utf8');
}
function adler32(data) {
  let a = 1;
  let b = 0;
  for (const byte of data) {
    a = (a + byte) % 65521;
    b = (b + a) % 65521;
  }
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(b * 65536 + a);
  return sum;
}
const dictionary = shortened(textLines.split('\n').join(''));

function jobIn(fragment) {
  ok(fragment.startsWith('j=1.'));
  const data = Buffer.from(fragment.slice(4), 'base64url');
  deepStrictEqual(data.subarray(0, 4), adler32(data.subarray(4)));
  return JSON.parse(lengthened(zlib.inflateRawSync(data.subarray(4), { dictionary })));
}
function linkTo(value, options) {
  const packed = zlib.deflateRawSync(shortened(JSON.stringify(value)), { dictionary, ...options });
  return `j=1.${Buffer.concat([adler32(packed), packed]).toString('base64url')}`;
}

// ---- links ---------------------------------------------------------------------------------------

/// Every part, every name and the shop are others than in any demo.
function changed(name) {
  const value = job(name);
  const figure = (text) => text.replace(/\d+/, (digits) => String((Number(digits) * 7 + 3) % 40 + 1));
  value.name = 'Tannery loft: hoist frame, second order';
  value.note = 'Primed grey; bundle by mark';
  delete value.due;
  value.parts.forEach((part, i) => {
    part.mark = `TL-${i + 11}`;
    const place = ['Upper', 'Lower', 'Outer', 'Inner', 'Spare'][i % 5];
    const thing = ['bearer', 'crane stop', 'yoke of the hoist', 'runway clamp'][i % 4];
    part.note = `${place} ${thing}, bay ${((i * 7) % 10) + 1}`;
    part.count = ((part.count ?? 1) * 5) % 23 + 1;
    if (part.length) part.length = figure(part.length);
    for (const operation of part.operations)
      if (operation.at?.column_pitch) operation.at.column_pitch = figure(operation.at.column_pitch);
  });
  value.shop.name = 'Tannery Lane Fabrication';
  value.shop.machine.name = 'Bay 2';
  const punch = value.shop.machine.stations[0];
  punch.force = name === 'inch' ? '66 ton' : '600 kN';
  punch.throat = figure(punch.throat);
  return value;
}

check('the dictionary is the one that links were made with', () => {
  equal(createHash('sha256').update(bytes).digest('hex'), 'd96587d46a3584c7546f08c5663e095f94a583c44eaf04cc9d7e6ce3e26e00f3');
});

const files = {
  'demo-inch': demo('inch'),
  'demo-metric': demo('metric'),
  'inch, all changed': file('inch.json', changed('inch')),
  'metric, all changed': file('metric.json', changed('metric')),
};
for (const [name, path] of Object.entries(files)) {
  const link = treadle('link', path).trim();
  console.log(`${name}: ${link.length} letters`);
  check(`${name}: Node reads the link`, () => {
    deepStrictEqual(jobIn(link), JSON.parse(treadle('link', '--read', link)));
  });
  check(`${name}: what is read makes the same link`, () => {
    const back = join(folder, 'back.json');
    writeFileSync(back, treadle('link', '--read', `${page}#${link}&view=present`));
    equal(treadle('link', back).trim(), link);
    equal(treadle('link', '--read', link), readFileSync(back, 'utf8'));
  });
  for (const options of [
    { level: 9 },
    { level: 1, memLevel: 1 },
    { level: 0 },
    { strategy: zlib.constants.Z_FIXED },
    { strategy: zlib.constants.Z_HUFFMAN_ONLY },
  ])
    check(`${name}: a link that Node made with ${JSON.stringify(options)} is read`, () => {
      const made = linkTo(JSON.parse(readFileSync(path, 'utf8')), options);
      equal(treadle('link', '--read', made), treadle('link', '--read', link));
    });
}
for (const name of ['demo-inch', 'demo-metric'])
  check(`${name} has a link of at most 1500 letters`, () => {
    ok(treadle('link', files[name]).trim().length <= 1500);
  });

// ---- codes on paper ------------------------------------------------------------------------------

function sheet(path, ...more) {
  const out = join(folder, 'sheet.html');
  treadle('sheet', path, '--out', out, ...more);
  return readFileSync(out, 'utf8');
}
function scanned(svg, dpi) {
  const drawn = join(folder, 'code.svg');
  const picture = join(folder, 'code.png');
  writeFileSync(drawn, svg);
  execFileSync('rsvg-convert', ['--dpi-x', dpi, '--dpi-y', dpi, '--background-color=white', '-o', picture, drawn]);
  const read = spawnSync('zbarimg', ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', picture], { encoding: 'utf8' });
  return read.stdout.trim();
}
const codeIn = (html) => /<figure class="code">(<svg.*?<\/svg>)/s.exec(html)?.[1];

/// The first parts of a demo job in its shop.
function first(name, parts) {
  const value = job(name);
  value.parts = value.parts.slice(0, parts);
  return file(`${name}-${parts}.json`, value);
}
for (const [name, path] of [
  ['demo-metric', demo('metric')],
  ['metric, all changed', files['metric, all changed']],
  ['one part', first('metric', 1)],
  ['three inch parts', first('inch', 3)],
]) {
  const html = sheet(path, '--link-base', page);
  const svg = codeIn(html);
  const address = `${page}#${treadle('link', path).trim()}`;
  check(`${name}: the code has modules of half a millimetre and fits on the sheet`, () => {
    const [, side, modules] = /width="([\d.]+)mm".*?viewBox="0 0 (\d+) /.exec(svg);
    console.log(`${name}: ${address.length} letters, ${modules} modules with the quiet zone, ${side} mm`);
    ok(side / modules >= 0.5 && side <= 63);
  });
  for (const dpi of [150, 300])
    check(`${name}: zbar reads the code at ${dpi} dots per inch`, () => equal(scanned(svg, dpi), address));
}
check('a code says where it leads', () => {
  ok(sheet(demo('metric'), '--link-base', page).includes(`Scan to open this job at ${page}</figcaption>`));
});
check('a job that is too long for a code says so', () => {
  const html = sheet(demo('inch'), '--link-base', page);
  ok(html.includes('This job is too long for a code to scan; keep its file with this sheet.'));
  equal(codeIn(html), undefined);
});
check('without a page to open it, the sheet says nothing of codes', () => {
  ok(!sheet(demo('metric')).includes('Scan'));
  ok(!sheet(demo('metric')).includes('for a code'));
});

rmSync(folder, { recursive: true });
console.log(`LINK ${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
