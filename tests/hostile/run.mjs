// Every hostile file through the program: refused with field and reason, quickly, in little memory,
// and left as it was. Then every text of a demo job as markup: the worksheet shows it and runs
// nothing. Prints the line that tests/run reads.

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { parse } from 'parse5';

import { make } from './make.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const program = process.env.TREADLE ?? join(root, 'build', 'release', 'treadle');
const most_memory_kB = 512 << 10; // the largest file has 65 MB
const most_seconds = 2; // of the processor; the clock runs on while neighbours work
const most_ms = 15000;
const folder = mkdtempSync(join(tmpdir(), 'treadle-hostile-'));
let passed = 0;
let failed = 0;

function check(name, holds, why = '') {
  if (holds) passed += 1;
  else failed += 1;
  if (!holds) console.log(`  FAIL  ${name}\n        ${String(why).slice(0, 500)}`);
}

function run(...words) {
  const start = performance.now();
  const ended = spawnSync('bash', ['-c', `ulimit -v ${most_memory_kB}; ulimit -t ${most_seconds}; ulimit -c 0; exec "$0" "$@"`, program, ...words],
    { encoding: 'utf8', maxBuffer: 64 << 20, timeout: 30000 });
  return { ...ended, ms: performance.now() - start };
}

const sum = (path) => createHash('sha256').update(readFileSync(path)).digest('hex');

/** What is not as it must be about one refusal; empty when all is well. */
function fault_of(ended) {
  if (ended.signal) return `ended by ${ended.signal}`;
  if (ended.status !== 2) return `exit ${ended.status}: ${ended.stdout} ${ended.stderr}`;
  if (ended.ms > most_ms) return `took ${Math.round(ended.ms)} ms`;
  try {
    const { error } = JSON.parse(ended.stdout);
    if (typeof error.field !== 'string' || !error.field) return `no field: ${ended.stdout}`;
    if (typeof error.reason !== 'string' || error.reason.length < 10) return `no reason: ${ended.stdout}`;
  } catch (fault) {
    return `${fault.message}: ${ended.stdout}`;
  }
  return ended.stderr ? `on standard error: ${ended.stderr}` : '';
}

function corpus() {
  const index = make(join(folder, 'a'));
  const again = make(join(folder, 'b'));
  check('there are at least 260 files', index.length >= 260, index.length);
  check('the same files every time', index.every(({ file }, i) =>
    file === again[i].file && sum(join(folder, 'a', file)) === sum(join(folder, 'b', file))));
  let slowest = 0;
  for (const { file, why } of index) {
    const path = join(folder, 'a', file);
    const before = sum(path);
    const ended = run('check', path);
    slowest = Math.max(slowest, ended.ms);
    const fault = fault_of(ended) || (sum(path) === before ? '' : 'the file was changed');
    check(`${file}: ${why}`, !fault, fault);
  }
  console.log(`  ${index.length} hostile files, slowest ${Math.round(slowest)} ms`);
}

// Closes whatever it may stand in, and then opens what nobody may open.
const payload = `'"></style></title></text></svg>--><treadle-probe onclick="1"><img src=x onerror=1> data-probe=1 "data-probe="1`;

/** Each kind of text once: the path without numbers, and how to set it. */
function texts_of(file) {
  const found = new Map();
  const walk = (value, path, set) => {
    if (typeof value === 'string') {
      const kind = path.replace(/\.\d+/g, '');
      if (!found.has(kind)) found.set(kind, path);
    } else if (value && typeof value === 'object') {
      for (const [key, inside] of Object.entries(value)) walk(inside, path ? `${path}.${key}` : key, set);
    }
  };
  walk(file, '');
  return found;
}

function set_at(file, path, value) {
  const keys = path.split('.');
  const last = keys.pop();
  keys.reduce((at, key) => at[key], file)[last] = value;
}

function elements_of(html) {
  const all = [];
  const walk = (node) => {
    if (node.tagName) all.push(node);
    for (const child of node.childNodes ?? []) walk(child);
    if (node.content) walk(node.content);
  };
  walk(parse(html));
  return all;
}

function sheet_of(file) {
  const job = join(folder, 'job.json');
  const out = join(folder, 'sheet.html');
  rmSync(out, { force: true });
  writeFileSync(job, JSON.stringify(file));
  const ended = run('sheet', job, '--out', out);
  return ended.status === 0 ? readFileSync(out, 'utf8') : null;
}

function escaping() {
  const demo = (name) => JSON.parse(readFileSync(join(root, 'assets', 'demo', name), 'utf8'));
  const usual = new Set(elements_of(sheet_of(demo('demo-inch.json'))).map((node) => node.tagName));
  usual.add('wbr'); // ours, in a long word
  check('the usual worksheet runs nothing', !usual.has('script') && !usual.has('img') && !usual.has('iframe'));
  let taken = 0;
  let shown = 0;
  const look = (name, html) => {
    taken += 1;
    if (html.includes('&lt;treadle-probe')) shown += 1;
    const all = elements_of(html);
    const strange = all.filter((node) => !usual.has(node.tagName)).map((node) => node.tagName);
    const live = all.flatMap((node) => node.attrs.map((attribute) => attribute.name))
      .filter((attribute) => attribute.startsWith('on') || attribute === 'data-probe');
    check(name, strange.length === 0 && live.length === 0, [...strange, ...live].join(' '));
  };
  for (const name of ['demo-inch.json', 'demo-metric.json']) {
    const everywhere = demo(name);
    for (const [kind, path] of texts_of(demo(name))) {
      const file = demo(name);
      set_at(file, path, payload);
      const html = sheet_of(file);
      if (html === null) continue; // a unit or a word of the format: refused, which is as good
      look(`${name} with markup for ${kind}`, html);
      set_at(everywhere, path, payload);
    }
    const html = sheet_of(everywhere);
    if (html !== null) look(`${name} with markup wherever it is taken`, html);
  }
  check('markup is taken for at least 12 kinds of text, and most of them are shown', taken >= 12 && shown >= 8, `${taken} taken, ${shown} shown`);
  console.log(`  markup taken for ${taken} texts, shown on ${shown} worksheets`);
}

try {
  corpus();
  escaping();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(`HOSTILE ${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
