// Makes the hostile files: node tests/hostile/make.mjs FOLDER
//
// From the demo files and from nothing, the same ones every time. index.json says of each its kind
// and why nobody may take it. Nothing of them is committed: this script is the corpus.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';

import { csv_files, fragment_files, record_files } from './texts.mjs';

const demo = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'assets', 'demo');
const inch = readFileSync(join(demo, 'demo-inch.json'), 'utf8');
const metric = readFileSync(join(demo, 'demo-metric.json'), 'utf8');

/** Numbers from 0 to below 1; a seed for each use, so that one more file changes no other. */
export function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const one_job = (spoil) => {
  const file = JSON.parse(inch);
  spoil(file);
  return JSON.stringify(file);
};
/** A raw text where a value stood: what JSON.stringify would not write. */
const raw = (place, text) => one_job((file) => place(file, '@RAW@')).replace('"@RAW@"', () => text);
const shop_file = (spoil = () => {}) => {
  const file = { format: 'treadle-shop', version: 1, shop: JSON.parse(inch).shop };
  spoil(file);
  return JSON.stringify(file);
};
const bundle_file = (spoil = () => {}) => {
  const file = { format: 'treadle-bundle', version: 1,
    jobs: [{ state: 'kept', file: JSON.parse(inch) }, { state: 'trash', file: JSON.parse(metric) }] };
  spoil(file);
  return JSON.stringify(file);
};
const shelf_file = (spoil = () => {}) => {
  const file = { format: 'treadle-shelf', version: 1,
    entries: [{ kind: 'job', title: 'A job', file: 'jobs/a.json' }, { kind: 'lesson', title: 'First', file: 'b.json' }] };
  spoil(file);
  return JSON.stringify(file);
};

const lesson = readFileSync(join(demo, '..', 'lessons', '1-punching-force.json'), 'utf8');
const lesson_file = (spoil = () => {}) => {
  const file = JSON.parse(lesson);
  spoil(file);
  return JSON.stringify(file);
};

const numbers = ['1e309', `1${'0'.repeat(400)}`, 'NaN', 'Infinity', '-Infinity', '-0', '2147483648',
  '9223372036854775808', '-1', '1.5', '0x10', '1e-400', '+1', '01', 'null', '"1"', 'true', '[]', '{}'];
const lengths = ['"1e308 in"', '"1e400 in"', '"NaN in"', '"Infinity mm"', '"-5 in"', '"0 in"', '"5"', '5', 'null', '[]',
  '{}', 'true', '"5 parsec"', '"1,250 mm"', '""', '" "', '"1/0 in"', `"${'9'.repeat(100000)} in"`, '"0x10 in"', '"５ in"',
  '"5 in 5 in"', '"5-3"', '"1e5 km"', '"\\u0000 in"', '"101 m"', '"2-Jan"', '"1.5E+03"'];
const odd_keys = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', ''];
const markup = ['<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '"><svg onload=alert(1)>', 'javascript:alert(1)'];

function cut(text, kind, places, seed, add) {
  const next = random(seed);
  for (let i = 0; i < places; ++i) {
    const at = 1 + Math.floor(next() * (text.trimEnd().length - 2));
    add(kind, `cut short after ${at} characters`, text.slice(0, at));
  }
}

function flip(text, kind, places, seed, add) {
  const next = random(seed);
  const signs = [...text.matchAll(/[{}[\]:,"]/g)].map((found) => found.index);
  for (let i = 0; i < places; ++i) {
    const at = signs[Math.floor(next() * signs.length)];
    const bytes = Buffer.from(text);
    const byte = Buffer.byteLength(text.slice(0, at));
    bytes[byte] ^= 1 << Math.floor(next() * 5);
    add(kind, `a bit flipped in the sign at ${at}`, bytes);
  }
}

function nested(open, close, deep) {
  return open.repeat(deep) + close.repeat(deep);
}

function job_files(add) {
  cut(inch, 'job', 24, 11, add);
  cut(metric, 'job', 12, 12, add);
  flip(inch, 'job', 24, 13, add);
  for (const text of numbers) {
    add('job', `version ${text.slice(0, 20)}`, raw((file, value) => (file.version = value), text));
    add('job', `count ${text.slice(0, 20)}`, raw((file, value) => (file.parts[0].count = value), text));
  }
  for (const text of lengths)
    add('job', `length ${text.slice(0, 20)}`, raw((file, value) => (file.parts[0].length = value), text));
  for (const key of odd_keys) {
    add('job', `an entry named ${key}`, inch.replace('{', `{${JSON.stringify(key)}: {"polluted": true},`));
    add('job', `a part with an entry named ${key}`, inch.replace('"mark"', `${JSON.stringify(key)}: {"polluted": true}, "mark"`));
  }
  for (const [name, key] of [['format', '"format"'], ['parts', '"parts"'], ['mark', '"mark"'], ['shop', '"shop"']])
    add('job', `${name} said twice`, inch.replace(key, `${key}: 1, ${key}`));
  for (const text of markup)
    add('job', 'markup in a name, and no grade', one_job((file) => {
      file.parts[0].mark = text;
      delete file.parts[0].grade;
    }));
}

function odd_text(add) {
  const name = (text) => raw((file, value) => (file.name = value), `"${text}"`);
  for (const [why, text] of [['a lone high surrogate', '\\ud800'], ['a lone low surrogate', '\\udc00'],
    ['surrogates turned round', '\\udc00\\ud800'], ['NUL by escape', 'a\\u0000b'], ['a control character', '\\u0001'],
    ['escape and bell', '\\u001b[2J\\u0007'], ['an escape that is none', '\\x41'], ['a line end in a text', 'a\nb'],
    ['a name of 4001 letters', 'x'.repeat(4001)], ['a name of a million letters', 'x'.repeat(1000000)]])
    add('job', why, name(text));
  const bytes = (inside) => Buffer.concat([Buffer.from('{"format":"treadle-job","name":"'), Buffer.from(inside), Buffer.from(inch.replace('{', '",'))]);
  for (const [why, inside] of [['an overlong slash', [0xc0, 0xaf]], ['an overlong NUL', [0xc0, 0x80]], ['beyond Unicode', [0xf5, 0x80, 0x80, 0x80]],
    ['a surrogate in UTF-8', [0xed, 0xa0, 0x80]], ['half a letter', [0xe2, 0x82]], ['a byte that begins nothing', [0xff]], ['NUL', [0]]])
    add('job', why, bytes(inside));
  const utf16 = Buffer.from(`\ufeff${inch}`, 'utf16le');
  add('job', 'a job in UTF-16, little end first', utf16);
  add('job', 'a job in UTF-16, big end first', Buffer.from(utf16).swap16());
  add('job', 'a job in UTF-16 without its mark', Buffer.from(inch, 'utf16le'));
}

function bombs(add) {
  const deep = 100000;
  for (const [why, text] of [['lists', nested('[', ']', deep)], ['groups', nested('{"a":', '}', deep).replace(':}', ':1}')],
    ['both', nested('[{"a":', '}]', deep).replace(':}', ':1}')], ['lists that never end', '['.repeat(deep)], ['groups that never end', '{"a":'.repeat(deep)]]) {
    add('job', `${deep} ${why} in each other`, text);
    add('job', `${deep} ${why} in each other, as the parts`, raw((file, value) => (file.parts = value), text));
  }
  const part = JSON.parse(inch).parts[0];
  add('job', '100,000 parts', one_job((file) => (file.parts = Array.from({ length: 100000 }, (_, i) => ({ ...part, id: `p${i}` })))));
  add('job', '100,000 empty parts', one_job((file) => (file.parts = Array(100000).fill({}))));
  add('job', 'a million and one values', `{"format":"treadle-job","version":1,"parts":[${'0,'.repeat(1000000)}0]}`);
  const hole = { do: 'punch', hole: { shape: 'round', size: '1/2 in' }, at: { x: '1 in', y: '1 in', columns: 100000, column_pitch: '1 in' } };
  add('job', '100,000 holes in a row', one_job((file) => (file.parts[0].operations = [hole])));
  add('job', '100,000 holes in ten patterns', one_job((file) => (file.parts[0].operations = Array(10).fill({ ...hole, at: { ...hole.at, columns: 9999 } }))));
  add('job', 'columns times rows beyond a whole number', one_job((file) => (file.parts[0].operations = [{ ...hole, at: { ...hole.at, columns: 10000, rows: 10000, row_pitch: '1 in' } }])));
  add('job', '501 operations on a part', one_job((file) => (file.parts[0].operations = Array(501).fill({ do: 'cut' }))));
  add('job', '600 entries in one group', one_job((file) => Object.assign(file, Object.fromEntries(Array.from({ length: 600 }, (_, i) => [`k${i}`, 1])))));
  add('job', '17 MB of spaces', ' '.repeat(17 << 20));
  add('job', 'a job behind 17 MB of spaces', ' '.repeat(17 << 20) + inch);
}

/** A job of version 2 with a ring in it, spoilt. */
const laid_out = (spoil) => (f) => {
  f.version = 2;
  f.layouts = [{ id: 'l1', kind: 'ring', mark: 'R1', values: [{ name: 'bar', text: 'round 1/2 in' }], made: [{ role: 'ring', part: f.parts[0].id }] }];
  spoil(f);
};

function no_jobs(add) {
  const others = { 'nothing': '', 'a space': ' ', 'a byte order mark': '\ufeff', 'null': 'null', 'true': 'true', 'a list': '[]', 'a number': '0',
    'a text': '"job"', 'an empty group': '{}', 'an open group': '{', 'two jobs behind each other': inch + inch, 'something behind the end': `${inch}x`,
    'a comma too many': inch.trimEnd().replace(/}$/, ',}'), 'a remark': `// a job\n${inch}`, 'single quotes': inch.replaceAll('"', "'"),
    'HTML': '<!doctype html><script>alert(1)</script>', 'XML with entities': '<!DOCTYPE a [<!ENTITY b "b"><!ENTITY c "&b;&b;">]><a>&c;</a>',
    'a zip': Buffer.from('504b0304140000000800', 'hex'), 'gzip': gzipSync(inch), 'a PNG': Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'),
    'a PDF': '%PDF-1.7\n%\xe2\xe3', 'a program': Buffer.from('7f454c46020101000000000000000000', 'hex'), 'all bytes': Buffer.from(Array.from({ length: 256 }, (_, i) => i)) };
  for (const [why, bytes] of Object.entries(others)) add('job', why, bytes);
  const spoils = { 'no format': (f) => delete f.format, 'format null': (f) => (f.format = null), 'another format': (f) => (f.format = 'other'),
    'version 3': (f) => (f.version = 3), 'version 0': (f) => (f.version = 0), 'no version': (f) => delete f.version, 'no units': (f) => delete f.units,
    'units nobody has': (f) => (f.units = 'furlong'), 'no parts': (f) => delete f.parts, 'parts a group': (f) => (f.parts = {}), 'a part null': (f) => (f.parts[0] = null),
    'two parts of one id': (f) => (f.parts[1].id = f.parts[0].id), 'a shape nobody knows': (f) => (f.parts[0].section.shape = 'star'),
    'an operation nobody knows': (f) => (f.parts[0].operations[0].do = 'laser'), 'a denominator of 3': (f) => (f.denominator = 3),
    'a force in gallons': (f) => (f.shop.machine.stations[0].force = '50 gallons'), 'legs without bends': (f) => (f.parts[0].legs = ['1 in', '2 in']),
    'a bend without legs': (f) => f.parts[0].operations.push({ do: 'bend', angle: '90 deg' }), 'a bend of 180': (f) => f.parts[0].operations.push({ do: 'bend', angle: '180 deg' }),
    'a mitre of 90': (f) => (f.parts[0].operations = [{ do: 'cut', start_mitre: '90 deg' }]), 'no mark': (f) => (f.parts[0].mark = ' '),
    'layouts in version 1': (f) => (f.layouts = []), 'layouts a group': laid_out((f) => (f.layouts = {})), 'a layout null': laid_out((f) => (f.layouts[0] = null)),
    'a layout without a kind': laid_out((f) => delete f.layouts[0].kind), 'a value twice': laid_out((f) => f.layouts[0].values.push(f.layouts[0].values[0])),
    'a value of 5,000 letters': laid_out((f) => (f.layouts[0].values[0].text = '9'.repeat(5000))), 'one part made twice': laid_out((f) => f.layouts.push({ ...f.layouts[0], id: 'l2' })),
    '300 layouts': laid_out((f) => (f.layouts = Array.from({ length: 300 }, (_, i) => ({ ...f.layouts[0], id: `l${i}`, made: [] })))) };
  for (const [why, spoil] of Object.entries(spoils)) add('job', why, one_job(spoil));
}

function other_files(add) {
  cut(shop_file(), 'shop', 8, 21, add);
  cut(bundle_file(), 'bundle', 8, 22, add);
  cut(shelf_file(), 'shelf', 6, 23, add);
  flip(shop_file(), 'shop', 8, 24, add);
  flip(bundle_file(), 'bundle', 8, 25, add);
  for (const [kind, file] of [['shop', shop_file], ['bundle', bundle_file], ['shelf', shelf_file]]) {
    add(kind, 'a newer version', file((f) => (f.version = 2)));
    add(kind, 'version 1e309', file().replace('"version":1', '"version":1e309'));
    add(kind, 'no version', file((f) => delete f.version));
    add(kind, 'an entry named __proto__', file().replace('{', '{"__proto__":{"a":1},'));
    add(kind, 'format said twice', file().replace('{', `{"format":"treadle-${kind}",`));
    add(kind, 'something behind the end', `${file()}x`);
  }
  add('shop', 'a shop that is a list', shop_file((f) => (f.shop = [])));
  add('shop', 'a force without end', shop_file((f) => (f.shop.machine.stations[0].force = '1e308 ton')).replace('1e308', '1e400'));
  add('shop', 'a negative count', shop_file((f) => (f.shop.crib.punches[0].count = -1)));
  add('bundle', '501 jobs', bundle_file((f) => (f.jobs = Array(501).fill({ state: 'kept', file: {} }))));
  add('bundle', 'a job in no state', bundle_file((f) => delete f.jobs[0].state));
  add('bundle', 'a bundle in a bundle', bundle_file((f) => (f.jobs[0].file = { format: 'treadle-bundle', version: 1, jobs: [] })));
  add('bundle', 'a nesting bomb as a job', bundle_file((f) => (f.jobs[0].file = '@')).replace('"@"', nested('[', ']', 100000)));
  add('bundle', 'a bracket that closes another', bundle_file().replace('[', '{'));
  add('bundle', '65 MB of spaces', Buffer.concat([Buffer.from('{"format":"treadle-bundle"'), Buffer.alloc(65 << 20, 32)]));
  for (const name of ['/a.json', '../a.json', 'a/../../b.json', './a.json', 'a/./b.json', 'a//b.json', '..\\a.json', 'a\\b.json', 'C:/a.json',
    'http://x/a.json', '//x/a.json', 'file:///a.json', 'javascript:alert(1)//.json', 'data:,x.json', 'blob:a.json', 'a%2e%2e/b.json', '%00.json', 'a\0.json',
    'a\n.json', 'a.json?x', 'a.json#x', 'a b.json', 'a.html', 'a.json.js', '.json', '', 'a/', '~/a.json', 'ä.json', `${'a'.repeat(300)}.json`,
    '<img src=x onerror=alert(1)>.json', '__proto__', 'jobs/a.json'])
    add('shelf', `the file ${JSON.stringify(name.slice(0, 30))}`, shelf_file((f) => (f.entries[1].file = name)));
  add('shelf', '201 entries', shelf_file((f) => (f.entries = Array.from({ length: 201 }, (_, i) => ({ kind: 'job', title: 'x', file: `${i}.json` })))));
  add('shelf', '300 KB', shelf_file() + ' '.repeat(300 << 10));
  add('shelf', 'a title of 201 letters', shelf_file((f) => (f.entries[0].title = 'x'.repeat(201))));
}

function lesson_files(add) {
  cut(lesson, 'lesson', 10, 31, add);
  flip(lesson, 'lesson', 12, 32, add);
  const spoils = { 'a newer version': (f) => (f.version = 2), 'no version': (f) => delete f.version, 'no steps': (f) => (f.steps = []),
    '61 steps': (f) => (f.steps = Array(61).fill(f.steps[0])), 'a step nobody knows': (f) => (f.steps[0].do = 'run'),
    'an answer in the file': (f) => (f.steps[2].figure = '40 ton'), 'a calculation nobody knows': (f) => (f.steps[2].calc = '__proto__'),
    'an output nobody knows': (f) => (f.steps[2].answer = 'constructor'), 'an endless range': (f) => (f.steps[2].vary = [{ input: 'size', from: '1 in', to: '1e9 in', by: '1 in' }]),
    'a range of a million steps': (f) => (f.steps[2].vary = [{ input: 'size', from: '1 mm', to: '90 m', by: '0.001 mm' }]),
    '201 sets': (f) => (f.steps[2].vary = [{ sets: Array(201).fill({ size: '1 in' }) }]), '13 mistakes': (f) => (f.steps[2].mistakes = Array(13).fill(f.steps[2].mistakes[0])),
    'a factor without end': (f) => (f.steps[2].mistakes[0].times = '1e999'), 'a tolerance of 90 %': (f) => (f.steps[2].tolerance = '90 %'),
    'a tolerance that is none': (f) => (f.steps[2].tolerance = 'about'), 'a part of 100,000 columns': (f) => (f.steps[4].parts[0].operations[0].at.columns = 100000),
    'a shop nobody knows': (f) => (f.steps[4].shop = '../demo-inch'), 'a shop that is a list': (f) => (f.steps[4].shop = []),
    'a job nobody has': (f) => (f.steps[5].job = '../../etc/passwd'), 'an input in braces that is none': (f) => (f.steps[2].ask = 'What of {__proto__}?'),
    'a million letters': (f) => (f.steps[0].words = ['x'.repeat(1000000)]), 'a title of markup and a control sign': (f) => (f.title = '<img src=x onerror=alert(1)>\u0001') };
  for (const [why, spoil] of Object.entries(spoils)) add('lesson', why, lesson_file(spoil));
  add('lesson', 'a nesting bomb as inputs', lesson_file((f) => (f.steps[2].in = '@')).replace('"@"', nested('{"a":', '}', 100000).replace(':}', ':1}')));
  add('lesson', 'format said twice', lesson_file().replace('{', '{"format":"treadle-lesson",'));
  add('lesson', '600 KB of spaces', lesson_file() + ' '.repeat(600 << 10));
}

export function make(folder) {
  mkdirSync(folder, { recursive: true });
  const index = [];
  const add = (kind, why, bytes) => {
    const file = `${String(index.length + 1).padStart(3, '0')}-${kind}`;
    writeFileSync(join(folder, file), bytes);
    index.push({ file, kind, why });
  };
  for (const files of [job_files, odd_text, bombs, no_jobs, other_files, lesson_files, csv_files, fragment_files, record_files]) files(add);
  writeFileSync(join(folder, 'index.json'), `[\n${index.map((line) => JSON.stringify(line)).join(',\n')}\n]\n`);
  return index;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  if (!process.argv[2]) throw new Error('node tests/hostile/make.mjs FOLDER');
  console.log(`${make(process.argv[2]).length} files`);
}
